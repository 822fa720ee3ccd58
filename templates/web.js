// The page's switches and its row counter. Everything it shows is in the page; it asks for nothing,
// and what it remembers stays in this browser.
"use strict";
(() => {
  const byId = (id) => document.getElementById(id);
  const root = document.documentElement;
  const main = byId("pattern");
  const data = JSON.parse(byId("pattern-data").textContent);
  const words = data.words;
  const switches = byId("switches");
  const counter = byId("counter");
  const told = byId("told");

  // Each line of the page's source is a line of its markup here; the sizes are runs of them.
  const lines = main.innerHTML.split("\n");
  const base = lines.length;
  lines.push(...data.lines);

  const say = (text, parts) => text.replace(/\{(\w+)\}/g, (all, name) => (name in parts ? parts[name] : all));

  // --- what is remembered -----------------------------------------------------------------
  const own = `loopwright ${data.id} `;
  const key = own + data.version;
  const store = (() => {
    try {
      const probe = `${own}probe`;
      localStorage.setItem(probe, "1");
      localStorage.removeItem(probe);
      return localStorage;
    } catch {
      return null;
    }
  })();

  // Another page of the same site may have written anything there.
  const whole = (value) => (Number.isSafeInteger(value) && value >= 0 ? value : 0);
  function recall(name) {
    let found = null;
    try {
      found = JSON.parse(store.getItem(name));
    } catch {
      return null;
    }
    if (found === null || typeof found !== "object") return null;
    const places = {};
    for (const { name: size } of data.sizes) places[size] = whole(found.places && found.places[size]);
    return {
      size: data.sizes.some((size) => size.name === found.size) ? found.size : null,
      units: ["both", "metric", "inches"].includes(found.units) ? found.units : "both",
      places,
      following: found.following === true,
      chart: found.chart !== false,
      awake: found.awake === true,
    };
  }
  const one = data.sizes.length === 1;
  const fresh = () => ({
    size: one ? data.sizes[0].name : null,
    units: "both",
    places: Object.fromEntries(data.sizes.map((size) => [size.name, 0])),
    following: false,
    chart: true,
    awake: false,
  });
  let state = (store && recall(key)) || fresh();
  if (one) state.size = data.sizes[0].name;
  function remember() {
    try {
      store.setItem(key, JSON.stringify(state));
    } catch {
      told.textContent = words.lost;
    }
  }

  // --- the page of a size, in a unit ------------------------------------------------------
  const chosen = () => data.sizes.find((size) => size.name === state.size) || null;
  function show() {
    const held = document.activeElement;
    const size = chosen();
    const runs = size && size.page.length ? size.page : [[0, base]];
    main.innerHTML = runs.map(([from, many]) => lines.slice(from, from + many).join("\n")).join("\n");
    root.dataset.units = state.units;
    const front = main.querySelector(".front");
    if (front) front.after(switches);
    else main.prepend(switches);
    if (held && held !== document.activeElement && held.isConnected) held.focus({ preventScroll: true });
    prepare();
    draw();
  }

  // --- the order of work ------------------------------------------------------------------
  // A step is rows worked one after the other, some number of times; a place counts single rows.
  let steps = [];
  let total = 0;
  let spots = new Map(); // a line -> the place where it is first worked, and behind its last
  function prepare() {
    const size = chosen();
    steps = [];
    total = 0;
    spots = new Map();
    const rowsDone = [];
    const cover = (at, from, to) => {
      const spot = spots.get(at);
      if (!spot) spots.set(at, { from, to });
      else spot.to = to;
    };
    for (const [times, tick, counted, piece, before, round, rows] of size ? size.follow : []) {
      const many = times * rows.length;
      const first = rowsDone[piece] || 0;
      steps.push({ times, tick, counted: counted === 1, piece, before, round: round === 1, rows, from: total, first });
      if (counted) rowsDone[piece] = first + many;
      if (tick) cover(tick, total, total + many);
      else rows.forEach(([at], index) => cover(at, total + index, total + index + 1));
      total += many;
    }
    for (const step of steps) step.all = rowsDone[step.piece] || 0;
    if (size) state.places[size.name] = Math.min(whole(state.places[size.name]), total);
    for (const [at] of spots) {
      const line = lineAt(at);
      if (!line || line.querySelector(".tick")) continue;
      const tick = document.createElement("button");
      tick.type = "button";
      tick.className = "tick";
      const label = line.querySelector(".label");
      const name = (label || line.querySelector(".text")).textContent.trim().replace(/:$/, "");
      tick.setAttribute("aria-label", say(words.mark, { line: name }));
      tick.addEventListener("click", () => toggle(at));
      line.prepend(tick);
    }
  }
  const lineAt = (at) => main.querySelector(`li[data-at="${at}"]`);
  const place = () => state.places[state.size] || 0;

  function find(at) {
    let low = 0;
    let high = steps.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (steps[middle].from <= at) low = middle;
      else high = middle - 1;
    }
    const step = steps[low];
    const inside = at - step.from;
    const long = step.rows.length;
    return { number: low, step, inside, turn: Math.floor(inside / long), index: inside % long };
  }

  function go(to) {
    if (!total) return;
    state.places[state.size] = Math.max(0, Math.min(to, total));
    remember();
    draw();
    reveal();
  }

  // A line that is not done: all is done up to it. A line that is done: back to it.
  function toggle(at) {
    const now = place();
    const line = lineAt(at);
    const done = line.classList.contains("done");
    const here = now < total ? find(now) : null;
    if (here && here.step.tick !== at) {
      const index = here.step.rows.findIndex(([row]) => row === at);
      if (here.step.tick && index >= 0) {
        const last = here.step.rows.findLastIndex(([row]) => row === at);
        const start = here.step.from + here.turn * here.step.rows.length;
        return go(done ? start + index : start + last + 1);
      }
    }
    const spot = spots.get(at);
    return go(done ? spot.from : spot.to);
  }

  // --- what the counter shows -------------------------------------------------------------
  function lineText(at) {
    const line = lineAt(at);
    if (!line) return "";
    const parts = [".label", ".text", ".count"].map((part) => line.querySelector(part));
    return parts.filter(Boolean).map((part) => part.innerText.replace(/\s+/g, " ").trim()).join(" ");
  }

  function position(at) {
    if (at >= total) return words.end;
    const { step, turn, inside } = find(at);
    if (!step.counted) {
      if (step.first >= step.all) return step.round ? words.lastRound : words.last;
      return say(step.round ? words.stepRound : words.step, { n: step.first + 1 });
    }
    const text = say(step.round ? words.round : words.row, { n: step.first + inside + 1, all: step.all });
    if (!step.tick || step.times < 2) return text;
    return `${text} · ${say(words.repeat, { n: turn + 1, all: step.times })}`;
  }

  function draw() {
    const following = state.following && total > 0;
    root.classList.toggle("following", following);
    counter.hidden = !following;
    for (const kind of ["done", "now", "held"]) {
      for (const line of main.querySelectorAll(`li.${kind}`)) line.classList.remove(kind);
    }
    for (const times of main.querySelectorAll(".times")) times.remove();
    for (const line of main.querySelectorAll('li[aria-current="step"]')) line.removeAttribute("aria-current");
    for (const row of main.querySelectorAll(".row.now")) row.classList.remove("now");
    if (!following) return;
    const now = place();
    const here = now < total ? find(now) : null;
    const finished = new Set();
    for (const [at, spot] of spots) if (spot.to <= now) finished.add(at);
    let current = null;
    if (here) {
      const { step, index, turn } = here;
      current = step.rows[index];
      step.rows.forEach(([at], row) => {
        if (row >= index) finished.delete(at);
        else if (!step.rows.some(([other], later) => later >= index && other === at)) finished.add(at);
      });
      if (step.tick) {
        finished.delete(step.tick);
        const held = lineAt(step.tick);
        if (held && step.tick !== current[0]) held.classList.add("held");
        if (held && step.times > 1) {
          const times = document.createElement("span");
          times.className = "times";
          times.textContent = say(words.times, { n: turn + 1, all: step.times });
          held.append(" ", times);
        }
      }
      const line = lineAt(current[0]);
      if (line) {
        line.classList.add("now");
        line.setAttribute("aria-current", "step");
      }
    }
    for (const at of finished) lineAt(at)?.classList.add("done");
    for (const tick of main.querySelectorAll(".tick")) {
      tick.setAttribute("aria-pressed", String(tick.parentElement.classList.contains("done")));
    }
    byId("where").textContent = position(now);
    byId("progress").max = total;
    byId("progress").value = now;
    byId("back").disabled = now === 0;
    byId("done").disabled = now === total;
    byId("aloud").textContent = here ? `${position(now)}. ${lineText(current[0])}` : words.end;
    chart(here, current);
  }

  // The row's chart: marked where it stands, and cut out above the counter.
  function chart(here, current) {
    const mini = byId("mini");
    mini.replaceChildren();
    const found = current && current[1] ? [...main.querySelectorAll(".charted")].find((each) => each.dataset.motif === current[1]) : null;
    const bands = found ? [...found.querySelectorAll(".row[data-row]")] : [];
    let row = current ? current[2] + 1 : 0;
    // Flat work with an odd number of rows is drawn twice over: on either side of the work. Rows
    // that turn at another place each time are drawn as often as they are worked.
    const high = Math.max(0, ...bands.map((band) => Number(band.dataset.row)));
    const long = Math.max(0, ...steps.flatMap((step) => step.rows.filter(([, motif]) => current && motif === current[1]).map(([, , index]) => index + 1)));
    if (here && long) row += long * ((here.step.before + here.turn) % Math.ceil(high / long));
    const marked = bands.filter((band) => Number(band.dataset.row) === row);
    byId("show-chart").hidden = !marked.length;
    byId("show-chart").setAttribute("aria-pressed", String(state.chart));
    mini.hidden = !marked.length || !state.chart;
    for (const band of marked) {
      band.classList.add("now");
      if (mini.hidden) continue;
      const sheet = band.ownerSVGElement;
      const [left, top, wide, deep] = sheet.getAttribute("viewBox").split(" ").map(Number);
      const from = Math.max(top, Math.min(Number(band.getAttribute("y")) - 10.5, top + deep - 31));
      const size = Math.min(31, deep);
      const cut = sheet.cloneNode(true);
      for (const part of cut.querySelectorAll("[id]")) part.removeAttribute("id");
      cut.querySelector("title")?.remove();
      cut.removeAttribute("role");
      cut.setAttribute("aria-hidden", "true");
      cut.setAttribute("viewBox", `${left} ${from} ${wide} ${size}`);
      cut.removeAttribute("width");
      cut.removeAttribute("height");
      cut.style.width = `${wide / 10 * 1.4}rem`;
      mini.append(cut);
    }
  }

  function reveal() {
    const now = place();
    const line = now < total ? main.querySelector("li.now") : null;
    if (!line) return;
    const box = line.getBoundingClientRect();
    const floor = innerHeight - counter.offsetHeight;
    if (box.top < 0 || box.bottom > floor) {
      const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
      const top = scrollY + box.top - Math.max((floor - box.height) / 2, 0);
      scrollTo({ top, behavior: calm ? "auto" : "smooth" });
    }
  }

  // --- the screen stays on, if asked --------------------------------------------------------
  let lock = null;
  async function stayAwake() {
    const wanted = state.awake && state.following && document.visibilityState === "visible";
    try {
      if (wanted && !lock) lock = await navigator.wakeLock.request("screen");
      else if (!wanted && lock) {
        await lock.release();
        lock = null;
      }
    } catch {
      lock = null;
    }
    lock?.addEventListener("release", () => { lock = null; });
  }
  if ("wakeLock" in navigator) {
    switches.querySelector(".awake").hidden = false;
    document.addEventListener("visibilitychange", stayAwake);
  }

  // --- the controls -------------------------------------------------------------------------
  function follow() {
    if (!chosen()) {
      told.textContent = words.choose;
      switches.querySelector(`[name="size"]`).focus();
      return;
    }
    state.following = true;
    told.textContent = store ? `${words.kept} ${words.keys}` : words.lost;
    byId("older").hidden = true;
    remember();
    draw();
    stayAwake();
    reveal();
    byId("done").focus({ preventScroll: true });
  }
  function leave() {
    state.following = false;
    remember();
    draw();
    stayAwake();
    byId("start").focus({ preventScroll: true });
  }
  switches.addEventListener("submit", (event) => event.preventDefault());
  switches.addEventListener("change", (event) => {
    const { name, value, checked } = event.target;
    if (name === "size") {
      state.size = value === "" ? null : data.sizes[Number(value)].name;
      if (value !== "" && told.textContent === words.choose) told.textContent = "";
      if (value === "") state.following = false;
      remember();
      show();
    } else if (name === "units") {
      state.units = value;
      root.dataset.units = value;
      remember();
      draw();
    } else if (name === "awake") {
      state.awake = checked;
      remember();
      stayAwake();
    }
  });
  byId("start").addEventListener("click", follow);
  byId("close").addEventListener("click", leave);
  byId("done").addEventListener("click", () => go(place() + 1));
  byId("back").addEventListener("click", () => go(place() - 1));
  byId("again").addEventListener("click", () => {
    if (confirm(words.sure)) go(0);
  });
  byId("show-chart").addEventListener("click", () => {
    state.chart = !state.chart;
    remember();
    draw();
  });
  document.addEventListener("keydown", (event) => {
    if (!state.following || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    if (event.key !== "ArrowRight" && event.key !== "ArrowLeft") return;
    // Where the arrows already do something, they go on doing it.
    if (event.target.closest('input, select, textarea, [role="region"], [contenteditable]')) return;
    event.preventDefault();
    go(place() + (event.key === "ArrowRight" ? 1 : -1));
  });
  addEventListener("storage", (event) => {
    // The same pattern in another window.
    if (event.key !== key) return;
    const other = recall(key);
    if (!other) return;
    const same = other.size === state.size;
    state.places = other.places;
    if (same) draw();
  });

  // A place in an earlier version of this pattern, offered and not taken over unasked.
  function earlier() {
    if (!store || store.getItem(key) !== null) return;
    const names = Object.keys(store).filter((name) => name.startsWith(own) && name !== key);
    const old = names.map(recall).find((each) => each && each.size !== null && each.places[each.size] > 0);
    if (!old) return;
    const note = byId("older");
    const kept = state;
    state = { ...fresh(), size: old.size, places: old.places };
    prepare();
    const where = position(place());
    state = kept;
    note.querySelector("span").textContent = say(words.older, { place: [one ? "" : old.size, where].filter(Boolean).join(", ") });
    note.hidden = false;
    note.querySelector("button").addEventListener("click", () => {
      state = { ...old };
      set();
      show();
      follow();
    });
  }
  function set() {
    const size = data.sizes.findIndex((each) => each.name === state.size);
    if (switches.elements.size) switches.elements.size.value = one || size < 0 ? "" : String(size);
    switches.elements.units.value = state.units;
    switches.elements.awake.checked = state.awake;
  }

  switches.hidden = false;
  if (!store) told.textContent = words.lost;
  earlier();
  set();
  show();
  if (state.following && chosen()) {
    told.textContent = `${words.kept} ${words.keys}`;
    reveal();
    stayAwake();
  }
})();
