/** Standard input as lines, for the commands that answer line by line. */
export async function readLines(input: NodeJS.ReadableStream): Promise<string[]> {
  let text = "";
  input.setEncoding("utf8");
  for await (const chunk of input) text += chunk;
  const lines = text.split(/\r?\n/);
  if (lines.at(-1) === "") lines.pop();
  return lines;
}
