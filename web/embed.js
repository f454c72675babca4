// <inchwise-planner>: whatever a page writes inside it is shown until the planner is ready, and
// stays if the planner cannot start. Nothing else is fetched until the element nears the screen.
// `data-state` on the element says how far it is: loading, working, ready, lost, failed.

const address = (name) => new URL(`element/__VERSION__/${name}`, import.meta.url);

const PATIENCE = 10_000; // Milliseconds until what does not come is told to have failed.

// What is asked for again must not be answered from a broken copy.
const asked = new Map();
const fresh = (name) => {
  const url = address(name);
  const turn = asked.get(name) ?? 0;
  asked.set(name, turn + 1);
  if (turn) url.searchParams.set("again", turn);
  return url;
};

const within = (promise, patience = PATIENCE) =>
  Promise.race([
    promise,
    new Promise((_, fail) => setTimeout(() => fail(new Error("it took too long")), patience)),
  ]);

const get = async (name) => {
  const ends = AbortSignal.timeout(PATIENCE);
  const response = await fetch(fresh(name), { signal: ends });
  if (!response.ok) throw new Error(`${response.url}: ${response.status}`);
  return response;
};

const style = async (name) => {
  const text = await (await get(name)).text();
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(text);
  return sheet;
};

const start = async () => {
  const files = [get("planner_bg.wasm"), style("planner.css")];
  const [glue, wasm, sheet] = await Promise.all([import(fresh("planner.js")), ...files]);
  await glue.default({ module_or_path: wasm });
  return { mount: glue.mount, sheet };
};

let started;
let engine;
let policy;

/// Everything known about a design, an object with the keys of the JSON form, `{}` for the default.
/// The engine behind it is loaded when it is first asked.
export const evaluate = async (design = {}) => {
  engine ??= import(address("engine.js")).then(async (glue) => {
    await glue.default({ module_or_path: get("engine_bg.wasm") });
    return glue;
  });
  try {
    return JSON.parse((await engine).evaluate(JSON.stringify(design)));
  } catch (error) {
    engine = undefined;
    throw error;
  }
};

/// What solves fields: a worker; where the page forbids workers, the same work in slices on the
/// page.
const spawn = () => {
  try {
    const { href } = address("worker.js");
    // Where a page requires trusted types, a policy of this name vouches for the one address.
    policy ??= globalThis.trustedTypes?.createPolicy("inchwise", { createScriptURL: () => href });
    return new Worker(policy?.createScriptURL(href) ?? href, { type: "module" });
  } catch (error) {
    console.warn("inchwise-planner: no worker", error);
    const here = { onmessage: null, onerror: null, terminate: () => (here.onmessage = null) };
    const served = import(address("worker.js")).then(({ serve }) =>
      serve((data) => here.onmessage?.({ data })),
    );
    here.postMessage = async (data) => (await served)(data);
    served.catch(() => here.onerror?.());
    return here;
  }
};

/// A design as the planner reads it: a link, or an object or its JSON made into one.
const link = (design) => {
  const text = design?.trim?.() ?? design;
  if (typeof text === "string" && !text.startsWith("{")) return text;
  try {
    const entries = Object.entries(typeof text === "string" ? JSON.parse(text) : text ?? {});
    return ["v=1", ...entries.map(([key, value]) => `${key}=${value}`)].join("&");
  } catch {
    return String(text).slice(0, 40);
  }
};

const words = {
  en: [
    "The planner could not start here. What stands above still holds. It tries again by itself.",
    "Try again",
  ],
  fr: [
    "Le calculateur n’a pas pu démarrer ici. Ce qui précède reste valable. Il réessaie de lui-même.",
    "Réessayer",
  ],
};

const ATTRIBUTES = ["design", "units", "language"];

class Planner extends HTMLElement {
  #turn = 0; // Loading takes time: a later turn means this one was overtaken.
  #handle;
  #near;
  #changes;
  #kept;
  #again;
  #failures = 0;

  constructor() {
    super();
    // A property set before the element was known is taken over.
    if (Object.hasOwn(this, "design")) {
      const { design } = this;
      delete this.design;
      queueMicrotask(() => (this.design = design));
    }
  }

  /// The design as it stands; set it to a link, or to an object with the keys of the JSON form.
  get design() {
    return this.#handle?.design();
  }
  set design(design) {
    this.setAttribute("design", link(design));
  }

  connectedCallback() {
    const turn = ++this.#turn;
    this.#near = new IntersectionObserver(
      (entries) => {
        if (!entries.some((entry) => entry.isIntersecting)) return;
        this.#near.disconnect();
        this.#show(turn);
      },
      { rootMargin: "50%" },
    );
    this.#near.observe(this);
  }

  disconnectedCallback() {
    this.#turn++;
    clearTimeout(this.#again);
    this.#near.disconnect();
    this.#changes?.disconnect();
    this.#kept = this.#handle?.unmount() ?? this.#kept;
    this.#handle = undefined;
    if (this.shadowRoot) this.#fill(document.createElement("slot"));
  }

  async #show(turn) {
    try {
      if (!this.#handle) this.dataset.state = "loading";
      started ??= start();
      const { mount, sheet } = await within(started);
      if (turn !== this.#turn) return;
      const root = document.createElement("div");
      root.className = "root";
      this.#fill(root).adoptedStyleSheets = [sheet];
      const json = this.getAttribute("design")?.trim().startsWith("{");
      if (json) this.setAttribute("design", link(this.getAttribute("design")));
      const places = async () => (await get("places.txt")).text();
      this.#handle = mount(root, this, { spawn, places, kept: this.#kept });
      this.#changes = new MutationObserver((changes) => {
        for (const { attributeName: name } of changes) {
          const value = this.getAttribute(name) ?? undefined;
          this.#handle?.set(name, name === "design" && value ? link(value) : value);
        }
      });
      this.#changes.observe(this, { attributeFilter: ATTRIBUTES });
      this.#failures = 0;
      this.dispatchEvent(new Event("inchwise-ready", { bubbles: true }));
    } catch (error) {
      console.warn("inchwise-planner:", error);
      started = undefined;
      if (turn !== this.#turn) return;
      this.dataset.state = "failed";
      this.#fill(document.createElement("slot"), ...this.#apology(turn));
      const pause = Math.min(60_000, 2000 * 2 ** this.#failures++);
      this.#again = setTimeout(() => this.#show(turn), pause);
    }
  }

  #apology(turn) {
    const language = this.getAttribute("language") ?? this.closest("[lang]")?.lang ?? "";
    const [said, again] = words[language.slice(0, 2)] ?? words.en;
    const note = document.createElement("p");
    note.setAttribute("role", "status");
    note.textContent = said;
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = again;
    button.addEventListener("click", () => {
      clearTimeout(this.#again);
      this.#show(turn);
    });
    return [note, button];
  }

  #fill(...nodes) {
    const shadow = this.shadowRoot ?? this.attachShadow({ mode: "open" });
    shadow.replaceChildren(...nodes);
    return shadow;
  }
}

customElements.get("inchwise-planner") ?? customElements.define("inchwise-planner", Planner);
