// <inchwise-planner>: whatever a page writes inside it is shown until the planner is ready, and
// stays if the planner cannot start. Nothing else is fetched until the element nears the screen.

const address = (name) => new URL(`element/__VERSION__/${name}`, import.meta.url);

const get = async (name) => {
  const response = await fetch(address(name));
  if (!response.ok) throw new Error(`${response.url}: ${response.status}`);
  return response;
};

const start = async () => {
  const parts = [import(address("inchwise.js")), get("inchwise_bg.wasm"), get("element.css")];
  const [glue, wasm, css] = await Promise.all(parts);
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(await css.text());
  await glue.default({ module_or_path: wasm });
  return { mount: glue.mount, sheet };
};

let started;

const apology = {
  en: "The planner could not start here. What stands above still holds.",
  fr: "Le calculateur n’a pas pu démarrer ici. Ce qui précède reste valable.",
};

class Planner extends HTMLElement {
  #turn = 0; // Loading takes time: a later turn means this one was overtaken.
  #handle;
  #near;
  #changes;

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
    this.#handle?.unmount();
    this.#handle = undefined;
    if (this.shadowRoot) this.#fill(document.createElement("slot"));
  }

  async #show(turn) {
    try {
      started ??= start();
      const { mount, sheet } = await started;
      if (turn !== this.#turn) return;
      const root = document.createElement("div");
      this.#fill(root).adoptedStyleSheets = [sheet];
      this.#handle = mount(root, this);
      this.#changes = new MutationObserver((changes) => {
        for (const { attributeName: name } of changes) {
          this.#handle?.set(name, this.getAttribute(name) ?? undefined);
        }
      });
      this.#changes.observe(this, { attributes: true });
      this.dispatchEvent(new Event("inchwise-ready", { bubbles: true }));
    } catch (error) {
      console.warn("inchwise-planner:", error);
      started = undefined;
      if (turn !== this.#turn) return;
      const note = document.createElement("p");
      note.setAttribute("role", "status");
      const language = this.closest("[lang]")?.lang ?? "";
      note.textContent = apology[language.slice(0, 2)] ?? apology.en;
      this.#fill(document.createElement("slot"), note);
    }
  }

  #fill(...nodes) {
    const shadow = this.shadowRoot ?? this.attachShadow({ mode: "open" });
    shadow.replaceChildren(...nodes);
    return shadow;
  }
}

customElements.get("inchwise-planner") ?? customElements.define("inchwise-planner", Planner);
