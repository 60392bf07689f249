/** Returns the marks of one stage of a manoeuvre: its position ids, or `any` alone when it can be done in every position. */
export function stageMarks(stage: readonly string[], positions: readonly { id: string }[]): string[] {
  return positions.length > 0 && positions.every(({ id }) => stage.includes(id)) ? ['any'] : [...stage];
}
