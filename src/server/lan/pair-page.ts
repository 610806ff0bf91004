import { page } from './page.ts';

/** Where a device says the code that stands at the desk, and how it is called. */
export const pairPage = (): string =>
  page(
    'Pair this device',
    `<p>At the desk, Hoistside shows a code of eight digits. It is good for ten minutes, once.</p>
<form id="pair">
<label for="code">Code</label>
<input id="code" name="code" inputmode="numeric" autocomplete="one-time-code" required>
<label for="name">Name of this device, as the record will show it</label>
<input id="name" name="name" maxlength="60" autocomplete="off" required>
<button>Pair</button>
<output for="code name" role="alert"></output>
</form>
<p>Does the browser warn of this address? <a href="/trust">How to trust it</a>.</p>
<script src="/pair/page.js"></script>`,
  );

/** Takes the device's token behind a #, as the page of the desk is opened: no log sees it. */
export const PAIR_JS = `const form = document.getElementById('pair');
const told = form.querySelector('output');
form.addEventListener('submit', async (event) => {
  event.preventDefault();
  told.textContent = '';
  try {
    const answer = await fetch('/api/pair', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ code: form.code.value, name: form.name.value }),
    });
    const body = await answer.json();
    if (answer.ok) location.replace('/#token=' + body.token);
    else told.textContent = body.refusals
      ? body.refusals.map((r) => r.why + '. ' + r.next).join(' ')
      : 'The server has failed; its terminal says how.';
  } catch {
    told.textContent = 'The server does not answer. Is this device on the same network?';
  }
});
`;
