// Stops with a plain message where Node is too old to read the rest. Kept in old syntax.
var major = Number(process.versions.node.split('.')[0]);
if (major < 20) {
  console.error(
    'Hoistside needs Node.js 20 or newer; this is ' +
      process.versions.node +
      '. Install a newer one from https://nodejs.org and run the command again.',
  );
  process.exit(1);
}
