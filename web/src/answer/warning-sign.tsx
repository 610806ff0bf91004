/** General warning sign, drawn after ISO 7010 W001: its words always stand beside it. */
export const WarningSign = () => (
  <svg className="warning-sign" viewBox="0 0 100 88" role="img" aria-label="Warning">
    <path className="sign-edge" d="M50 2 98 86H2z" />
    <path className="sign-field" d="M50 14 88 80H12z" />
    <path className="sign-mark" d="M44.5 34h11l-3 26h-5z" />
    <circle className="sign-mark" cx="50" cy="69" r="5.5" />
  </svg>
);
