/** Cuts bytes into lines of text, without their line ends. @throws what `tooLong` makes. */
export async function* linesOf(
  chunks: AsyncIterable<Uint8Array>,
  longest: number,
  tooLong: (line: number) => Error,
): AsyncGenerator<string> {
  let pieces: Uint8Array[] = [];
  let held = 0;
  let line = 1;
  for await (const chunk of chunks) {
    let from = 0;
    for (let to = chunk.indexOf(10); to >= 0; to = chunk.indexOf(10, from)) {
      pieces.push(chunk.subarray(from, to));
      yield Buffer.concat(pieces).toString('utf8');
      [pieces, held, from] = [[], 0, to + 1];
      line += 1;
    }
    pieces.push(chunk.subarray(from));
    held += chunk.length - from;
    if (held > longest) throw tooLong(line);
  }
  if (held > 0) yield Buffer.concat(pieces).toString('utf8');
}
