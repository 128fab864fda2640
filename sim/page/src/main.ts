// The bench: reads the truck, builds the sheet, and keeps its parts in step.

import { api, frozen, Refusal } from "./api";
import { makeBlock } from "./block";
import { changesPage } from "./changes";
import { byId, say } from "./dom";
import { lags, settleLater } from "./edits";
import { coursePage } from "./course";
import { makeHeader } from "./header";
import { listPage } from "./list";
import { makeHistory } from "./history";
import { keepInStep } from "./link";
import { mapsPage } from "./maps";
import { planPage } from "./plan";
import { makePolar } from "./polar";
import { boardPage, scalesPage } from "./scales";
import { makeShare } from "./share";
import { makeStage } from "./stage";
import { Replay } from "./replay";
import { look, store, takeBench } from "./store";
import { suspensionPage } from "./suspension";
import { makePlaces, makeTabs, several } from "./tabs";
import { Tilt } from "./tilt";
import { weightsPage } from "./weights";
import { wizardPage } from "./wizard";

async function start(): Promise<void> {
  const bench = await api.bench();
  store.bench = bench;
  store.rows = bench.rows;
  store.measures = bench.measures;
  store.scene = bench.scene;
  store.answers = bench.answers;
  const stage = makeStage();
  makeHeader(() => stage.repaint());
  makePolar();
  makeBlock();
  const tilt = new Tilt(stage);
  makePlaces();
  makeShare(stage);
  if (frozen) {
    document.documentElement.dataset["frozen"] = "";
    byId<HTMLInputElement>("turn").step = String(frozen.turn_deg);
  } else makeTabs([
    { id: "weights", name: "Weights", make: weightsPage },
    { id: "tune", name: "Changes", make: several("Changes", [
      { id: "changes", name: "Switches", make: changesPage },
      { id: "plan", name: "Best set", make: planPage },
      { id: "list", name: "The list", make: listPage },
    ]) },
    { id: "measure", name: "Scale and board", make: several("Scale and board", [
      { id: "wizard", name: "Step by step", make: wizardPage },
      { id: "scales", name: "On the scale", make: scalesPage },
      { id: "board", name: "On the board", make: boardPage },
    ]) },
    { id: "maps", name: "Sweeps", make: mapsPage },
    { id: "suspension", name: "Links", make: suspensionPage },
    { id: "course", name: "Course", make: coursePage },
  ]);
  if (!frozen) {
    settleLater();
    keepInStep();
    makeHistory();
  }
  takeBench(bench);
  look({ tilt: 25, heading: 90 });
  if (bench.recovered) say("Unsaved work from last time is back on the bench. Undo steps through it.");
  const replay = new Replay(stage, tilt);
  performance.mark("bench-ready");
  document.documentElement.dataset["ready"] = "";
  Object.assign(window, { benchWatch: { stage, lags, replay } });
}

// A refusal that nothing waits for is still a sentence, and no fault of the page.
addEventListener("unhandledrejection", (e) => {
  if (!(e.reason instanceof Refusal)) return;
  e.preventDefault();
  if (e.reason.status !== 0 && e.reason.status !== 409) say(e.reason.message, "wrong");
});

start().catch((e: unknown) => {
  byId("notice").textContent = e instanceof Error ? e.message : String(e);
  byId("notice").hidden = false;
});
