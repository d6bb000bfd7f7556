// Brew it on your kit: shows the questions, and has the engine answer them, here in the browser. Nothing is sent anywhere.
const panel = document.getElementById("kit"), form = panel.querySelector("form"), answer = document.getElementById("recast");
const folder = new URL("engine/", import.meta.url);

/** A file of the engine: as the host packs it; else our own packed one, unpacked here; else as it is. */
async function part(name, type, isPackedByHost) {
    if (!isPackedByHost && "DecompressionStream" in window) {
        const packed = await fetch(new URL(name + ".gz", folder));
        if (packed.ok) {
            // Some hosts say that such a file is packed, and the browser has unpacked it then.
            const isUnpacked = packed.headers.get("content-encoding") === "gzip";
            const bytes = isUnpacked ? packed.body : packed.body.pipeThrough(new DecompressionStream("gzip"));
            return new Response(bytes, { headers: { "content-type": type } });
        }
    }
    return fetch(new URL(name, folder));
}

async function start() {
    const first = await fetch(new URL("dotnet.js", folder));
    if (!first.ok) throw new Error("the engine does not lie beside this page");
    const isPackedByHost = first.headers.get("content-encoding") !== null;
    const { dotnet } = await import(new URL("dotnet.js", folder));
    const runtime = await dotnet
        .withResourceLoader((kind, name, address) => kind === "dotnetjs" || address.endsWith(".js") ? undefined : part(address.slice(address.lastIndexOf("/") + 1), "application/wasm", isPackedByHost))
        .create();
    const { Gylebook: { Reader: { Reader: engine } } } = await runtime.getAssemblyExports("Gylebook.Reader.dll");
    const publication = await fetch("publication.json");
    if (!publication.ok || !engine.Open(await publication.text())) throw new Error("what was published cannot be read");
    return engine;
}

let engine = null;
const typed = () => new URLSearchParams([...new FormData(form)].filter(([name, value]) => value !== "" && value !== form.elements[name].dataset?.was && !(name === "mash" && form.elements.mash[form.elements.mash.selectedIndex].defaultSelected)));

function take(words, name, text) {
    const link = document.createElement("a");
    link.textContent = words;
    link.download = name;
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    return link;
}

let asked = 0;
async function work() {
    const mine = ++asked, query = typed().toString();
    history.replaceState(null, "", query ? "?" + query + "#kit" : location.pathname + "#kit");
    panel.classList.add("busy");
    if (!answer.firstChild) answer.textContent = "Working it out…";
    try {
        const running = await (engine ??= start());
        // Let the words above be seen first.
        await new Promise(done => setTimeout(done));
        if (mine !== asked) return;
        const told = JSON.parse(running.Answer(query));
        answer.innerHTML = told.html;
        answer.dataset.brews = told.brews;
        if (told.brews) {
            const links = document.createElement("p");
            links.className = "down noprint";
            links.append(take("this recipe's file", "recipe-on-my-kit.json", told.recipe), take("this kit's file", "my-kit.json", told.kit));
            answer.append(links);
        }
        panel.classList.add("done");
    } catch (problem) {
        engine = null;
        answer.textContent = `It cannot be worked out here: ${problem.message}. The recipe above holds all the same.`;
    } finally {
        panel.classList.remove("busy");
    }
}

for (const [name, value] of new URLSearchParams(location.search)) {
    if (form.elements[name]) form.elements[name].value = value;
}
function listOf(select) {
    const input = form.elements["instead" + select.name.slice("without".length)];
    input.setAttribute("list", select.selectedOptions[0]?.dataset.list ?? "malts");
}
for (const select of form.querySelectorAll("select[name^=without]")) {
    listOf(select);
    select.addEventListener("change", () => listOf(select));
}
function ask() {
    const way = form.elements.mash?.value;
    for (const label of form.querySelectorAll("[data-with]")) label.hidden = way !== undefined && label.dataset.with !== way;
}
form.elements.mash?.addEventListener("change", ask);
ask();
let soon = 0;
form.addEventListener("input", () => { if (engine) { clearTimeout(soon); soon = setTimeout(work, 400); } });
form.addEventListener("submit", event => { event.preventDefault(); clearTimeout(soon); work(); });
panel.hidden = false;
if (typed().toString()) work();
