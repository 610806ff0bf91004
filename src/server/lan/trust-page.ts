import type { LanCertificate } from './certificate.ts';
import { escaped, page } from './page.ts';

/** Why a browser warns, what to compare, and how kinds of devices are told to trust the server. */
export const trustPage = ({ fingerprint, names }: LanCertificate): string =>
  page(
    'Trust this server',
    `<p>What goes between this device and the desk is encrypted. For that the desk has made a
certificate of its own, which no browser knows yet: hence its warning. Once this device trusts it,
the warning goes, and pages can be kept for work without a network.</p>
<p><strong>Compare first.</strong> The desk prints this fingerprint in its terminal. If it prints
another one, stop here: somebody may be between.</p>
<p><code>${escaped(fingerprint)}</code></p>
<p><a class="button" href="/trust/authority.crt" download="hoistside.crt">Fetch the certificate</a></p>
<h2>Then, by kind of device</h2>
<ul>
<li>Tablets and phones that ask whether to <em>download a profile</em>: allow it, open the
settings, install the profile, then switch it on under <em>certificate trust settings</em>.</li>
<li>Tablets and phones with <em>encryption and credentials</em> or <em>install a certificate</em>
in their security settings: choose <em>CA certificate</em> there and pick the file.</li>
<li>Computers: open the file and put it into the store of <em>trusted root certificates</em>, or
import it under <em>authorities</em> in the browser's own settings.</li>
</ul>
<p>The certificate vouches for addresses of private networks and for ${escaped(names.names.join(', '))}
only. It can vouch for no page of the internet. Take it out of the device when the work is done.</p>
<p><a class="button" href="/pair">Pair this device</a></p>`,
  );
