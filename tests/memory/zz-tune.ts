import { createScheduler } from "@/lib/memory/scheduler";
import { boxes, type Course, makeItems, rotation, runCourse, type StudentKind } from "./simulate";

const N = Number(process.argv[2] ?? 20);
const cfgs = [
  { n: 40, deadline: 10, budget: 240, att: 0.85 },
  { n: 60, deadline: 21, budget: 300, att: 0.8 },
  { n: 80, deadline: 14, budget: 240, att: 0.8 },
];
const q = (xs: number[]) => {
  const s = [...xs].sort((a, b) => a - b);
  const k = Math.max(1, Math.floor(s.length / 4));
  return s.slice(0, k).reduce((a, b) => a + b, 0) / k;
};
const m = (xs: number[]) => xs.reduce((a, b) => a + b, 0) / xs.length;
for (const c of cfgs)
  for (const kind of (process.argv[3]?.split(",") ?? [
    "activation",
    "hold",
    "half-life",
    "multiscale",
  ]) as StudentKind[]) {
    const items = makeItems(c.n);
    const line: string[] = [];
    for (const [name, mk] of [
      ["rot", rotation],
      ["box", boxes],
      [
        "own",
        (x: Course) =>
          createScheduler({
            items: x.items,
            startDay: 0,
            deadline: x.deadline,
            budgetSeconds: x.budgetSeconds,
            seed: x.seed,
          }),
      ],
    ] as const) {
      const rs = Array.from({ length: N }, (_, seed) =>
        runCourse(
          { items, deadline: c.deadline, budgetSeconds: c.budget, seed, kind, attendance: c.att },
          mk,
        ),
      );
      line.push(
        `${name} ${m(rs.map((r) => r.onDate)).toFixed(3)} ${q(rs.map((r) => r.onDate)).toFixed(3)} ${m(rs.map((r) => r.weekLater)).toFixed(3)}` +
          (name === "own"
            ? ` ms ${m(rs.map((r) => r.mean)).toFixed(2)}/${Math.max(...rs.map((r) => r.slowest)).toFixed(1)}`
            : ""),
      );
    }
    console.log(`${c.n}/${c.deadline}/${c.budget} ${kind.padEnd(10)} | ${line.join(" | ")}`);
  }
