import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App.tsx";
import { startAutosave } from "./files/autosave.ts";
import { openLink } from "./files/linking.ts";
import { reopenBringing } from "./ownBlock/bringing.ts";
import { startPrefs } from "./prefs/prefs.ts";
import { startKeys } from "./shell/keys.ts";
import "./styles/studio.css";

function show(): void {
  const root = document.getElementById("root");
  if (!root) return;
  createRoot(root).render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
}

startPrefs();
startKeys();
reopenBringing();
startAutosave().then(openLink).then(show, show);

if (import.meta.env.PROD && "serviceWorker" in navigator) {
  navigator.serviceWorker.register("./sw.js").catch(() => undefined);
}
