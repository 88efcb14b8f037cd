/* Works beside the program that reads the lines: answers one formula at a time. */
import { startEngine } from "../../engine/engine";

const engine = await startEngine();
process.on("message", (formula: string) => {
  void engine.evaluate([formula]).then(([answer]) => process.send!(answer));
});
process.on("disconnect", () => process.exit());
