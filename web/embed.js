// <inchwise-planner>: whatever a page writes inside it is shown until the planner is ready, and
// stays if the planner cannot start. Nothing else is fetched until the element nears the screen.

const address = (name) => new URL(`element/__VERSION__/${name}`, import.meta.url);

const get = async (name) => {
  const response = await fetch(address(name));
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
  const [glue, wasm, sheet] = await Promise.all([import(address("planner.js")), ...files]);
  await glue.default({ module_or_path: wasm });
  return { mount: glue.mount, sheet };
};

// The further part of the page, loaded behind the first, which stands and works without it.
const startFurther = async () => {
  const files = [get("further_bg.wasm"), style("further.css")];
  const [glue, wasm, sheet] = await Promise.all([import(address("further.js")), ...files]);
  await glue.default({ module_or_path: wasm });
  return { Further: glue.Further, sheet };
};

// The table of places, fetched when a visitor first searches it.
const places = async () => (await get("places.txt")).text();

let started;
let startedFurther;
let engine;
let policy;

/// Everything known about a design, an object with the keys of the JSON form, `{}` for the default.
/// The engine behind it is loaded when it is first asked.
export const evaluate = async (design = {}) => {
  engine ??= import(address("engine.js")).then(async (glue) => {
    await glue.default({ module_or_path: get("engine_bg.wasm") });
    return glue;
  });
  return JSON.parse((await engine).evaluate(JSON.stringify(design)));
};

/// What solves fields: a worker; where the page forbids workers, the same work in slices on the
/// page.
const aside = () => {
  let worker;
  let over = false;
  let last;
  let lastYear;
  let hear;
  const here = {
    onmessage: null,
    postMessage: (data) => hear((last = data)),
    also: { onmessage: null, postMessage: (data) => hear((lastYear = data)) },
    terminate: () => {
      over = true;
      worker?.terminate();
    },
  };
  const say = (data) => {
    if (over) return;
    here.onmessage?.({ data });
    here.also.onmessage?.({ data });
  };
  const stand = (reason) => {
    console.warn("inchwise-planner: no worker", reason);
    const served = import(address("worker.js")).then(({ serve }) => serve(say));
    hear = async (data) => (await served)(data);
    if (last) hear(last);
    if (lastYear) hear(lastYear);
  };
  try {
    const { href } = address("worker.js");
    // Where a page requires trusted types, a policy of this name vouches for the one address.
    policy ??= globalThis.trustedTypes?.createPolicy("inchwise", { createScriptURL: () => href });
    worker = new Worker(policy?.createScriptURL(href) ?? href, { type: "module" });
    worker.onmessage = ({ data }) => say(data);
    worker.onerror = stand;
    hear = (data) => worker.postMessage(data);
  } catch (error) {
    stand(error);
  }
  return here;
};

/// What an object holds, each by its path: `box=40_high_cube`, `place.elevation_m=420`.
const entries = (object, path = "") =>
  Object.entries(object).flatMap(([key, value]) =>
    value && typeof value === "object"
      ? entries(value, `${path}${key}.`)
      : `${path}${key}=${value}`,
  );

/// A design as the planner reads it: a link, or an object or its JSON made into one.
const link = (design) => {
  const text = design?.trim?.() ?? design;
  if (typeof text === "string" && !text.startsWith("{")) return text;
  try {
    const design = typeof text === "string" ? JSON.parse(text) : text ?? {};
    return ["v=1", ...entries(design)].join("&");
  } catch {
    return String(text);
  }
};

const apologies = {
  planner: {
    en: "The planner could not start here. What stands above still holds.",
    fr: "Le calculateur n’a pas pu démarrer ici. Ce qui précède reste valable.",
  },
  further: {
    en: "Further choices and figures could not be loaded here. Reload the page to try again.",
    fr: "D’autres choix et chiffres n’ont pas pu être chargés. Rechargez la page pour réessayer.",
  },
};

class Planner extends HTMLElement {
  #turn = 0; // Loading takes time: a later turn means this one was overtaken.
  #handle;
  #near;
  #changes;
  #worker;
  #further;

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
    this.#near.disconnect();
    this.#changes?.disconnect();
    this.#further?.unmount();
    this.#handle?.unmount();
    this.#further = this.#handle = undefined;
    this.#worker?.terminate();
    if (this.shadowRoot) this.#fill(document.createElement("slot"));
  }

  async #show(turn) {
    try {
      started ??= start();
      const { mount, sheet } = await started;
      if (turn !== this.#turn) return;
      const root = document.createElement("div");
      this.#fill(root).adoptedStyleSheets = [sheet];
      const json = this.getAttribute("design")?.trim().startsWith("{");
      if (json) this.setAttribute("design", link(this.getAttribute("design")));
      this.#worker = aside();
      this.#handle = mount(root, this, this.#worker);
      this.#changes = new MutationObserver((changes) => {
        for (const { attributeName: name } of changes) {
          const value = this.getAttribute(name) ?? undefined;
          this.#handle?.set(name, name === "design" && value ? link(value) : value);
        }
      });
      this.#changes.observe(this, { attributes: true });
      this.dispatchEvent(new Event("inchwise-ready", { bubbles: true }));
      this.#showFurther(turn);
    } catch (error) {
      console.warn("inchwise-planner:", error);
      started = undefined;
      if (turn !== this.#turn) return;
      this.#fill(document.createElement("slot"), this.#apology("planner"));
    }
  }

  async #showFurther(turn) {
    try {
      startedFurther ??= startFurther();
      const { Further, sheet } = await startedFurther;
      if (turn !== this.#turn) return;
      this.shadowRoot.adoptedStyleSheets.push(sheet);
      this.#further = new Further(
        this.#handle.further(),
        this.#worker.also,
        this.#handle,
        places,
      );
      this.#handle.follow(this.#further);
    } catch (error) {
      console.warn("inchwise-planner:", error);
      startedFurther = undefined;
      if (turn === this.#turn) this.#handle.further().append(this.#apology("further"));
    }
  }

  #apology(part) {
    const note = document.createElement("p");
    note.setAttribute("role", "status");
    const language = this.getAttribute("language") ?? this.closest("[lang]")?.lang ?? "";
    note.textContent = apologies[part][language.slice(0, 2)] ?? apologies[part].en;
    return note;
  }

  #fill(...nodes) {
    const shadow = this.shadowRoot ?? this.attachShadow({ mode: "open" });
    shadow.replaceChildren(...nodes);
    return shadow;
  }
}

customElements.get("inchwise-planner") ?? customElements.define("inchwise-planner", Planner);
