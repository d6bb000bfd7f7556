using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The fields of a recipe, in the order of its file.</summary>
internal static class RecipeForm
{
    private static readonly Form<PackageWish> Package = new Form<PackageWish>(new PackageWish(default, "", null)) { About = "The beer wanted at the end." }
        .Need("volume", "volume", Leaves.Of<VolumeAt20C>(), p => p.Volume, (p, v) => p with { Volume = v }, new("How much finished beer is wanted."))
        .Need("in", "in", Leaves.Name, p => p.In, (p, v) => p with { In = v }, new("A kit package's kind: bottle, keg.") { Said = "packaged in" })
        .May("carbonation", "carbonation", Leaves.Of<Carbonation>(), p => p.Carbonation, (p, v) => p with { Carbonation = v }, new("How lively, in volumes of CO2 per volume of beer; as fermented when left out.") { Said = "carbonation" });

    private static readonly Form<HoldPlan> Hold = new Form<HoldPlan>(new HoldPlan(null, null)) { About = "Numbers that hold: what is weighed for them follows every change on the page, and a solver's wish." }
        .May("originalGravity", "original gravity", Leaves.Of<SpecificGravity>(), h => h.OriginalGravity, (h, v) => h with { OriginalGravity = v }, new("All in. Malt and malt extract are weighed for it.") { Said = "original gravity held", Nothing = "let go" })
        .May("bitterness", "bitterness", Leaves.Of<Bitterness>(), h => h.Bitterness, (h, v) => h with { Bitterness = v }, new("Of the whole beer. The hops that boil longest are weighed for it.") { Said = "bitterness held", Nothing = "let go" });

    private static readonly Form<Rest> Rest = new Form<Rest>(new Rest(default, default)) { About = "A temperature held for a time.", SchemaName = "rest" }
        .Need("temperature", "temperature", Leaves.Of<Temperature>(), r => r.Temperature, (r, v) => r with { Temperature = v })
        .Need("time", "time", Leaves.Of<Duration>(), r => r.Time, (r, v) => r with { Time = v });

    private static readonly Form<SpargePlan> Sparge = new Form<SpargePlan>(SpargePlan.None) { About = "How the grain is rinsed." }
        .Need("method", "method", Leaves.Word(FileWords.SpargeMethods), s => s.Method, (s, v) => s with { Method = v }, new("none; pour over the hung bag; dunk the bag in fresh liquor; batch: the bed drained and filled again; continuous: in at the top as wort runs off."))
        .May("volume", "volume", Leaves.Of<VolumeAt20C>(), s => s.Volume, (s, v) => s with { Volume = v }, new("Of the rinse liquor; it must be there with any method but none."))
        .May("temperature", "temperature", Leaves.Of<Temperature>(), s => s.Temperature, (s, v) => s with { Temperature = v }, new("Of the rinse liquor."));

    private static readonly Form<MashPlan> Mash = new Form<MashPlan>(new MashPlan(default, [], SpargePlan.None)) { About = "How grain and liquor meet and part." }
        .Need("method", "method", Leaves.Word(FileWords.MashMethods), m => m.Method, (m, v) => m with { Method = v }, new("bag in the kettle, tun, part beside extract, or none."))
        .MayList("rests", "rests", new ListForm<Rest>(Rest) { ItemSaid = "mash" }, m => m.Rests, (m, v) => m with { Rests = v }, new("One after the other; the first sets the strike temperature.") { Said = "mash rests" })
        .May("sparge", "sparge", Sparge, m => m.Sparge == SpargePlan.None ? null : m.Sparge, (m, v) => m with { Sparge = v ?? SpargePlan.None }, new() { Said = "sparge" });

    private static readonly Form<LiquorPlan> Liquor = new Form<LiquorPlan>(new LiquorPlan(null, null)) { About = "Liquor fixed by hand; planned backwards from the package when left out." }
        .May("strike", "strike", Leaves.Of<VolumeAt20C>(), l => l.Strike, (l, v) => l with { Strike = v }, new("What the mash starts in.") { Said = "strike liquor", Nothing = "planned" })
        .May("topUp", "top-up", Leaves.Of<VolumeAt20C>(), l => l.TopUp, (l, v) => l with { TopUp = v }, new("Into the kettle at copper-up.") { Said = "top-up liquor", Nothing = "planned" });

    private static readonly Form<SouringPlan> Souring = new Form<SouringPlan>(new SouringPlan("", default, new PhTarget(0, ""), default)) { About = "Souring in the kettle, before the boil." }
        .Need("culture", "culture", Leaves.Name, s => s.Culture, (s, v) => s with { Culture = v }, new("What sours it: lactobacillus, yoghurt."))
        .Need("temperature", "temperature", Leaves.Of<Temperature>(), s => s.Temperature, (s, v) => s with { Temperature = v }, new("At which it is kept while it sours."))
        .Need("ph", "pH", Spelled.Ph, s => s.Ph, (s, v) => s with { Ph = v }, new("The pH at which it is boiled, sample cooled to 20 °C."))
        .Need("time", "time", Leaves.Of<Duration>(), s => s.Time, (s, v) => s with { Time = v }, new("How long you think that takes; nothing is reckoned from it."));

    private static readonly Form<BoilPlan> Boil = new Form<BoilPlan>(new BoilPlan(default))
        .Need("time", "time", Leaves.Of<Duration>(), b => b.Time, (b, v) => b with { Time = v }, new("From the first bubble to knock-out."));

    private static readonly Form<PortionShare> Portion = new Form<PortionShare>(new PortionShare("", default)) { About = "A share of the cast that goes its own way." }
        .Need("name", "name", Leaves.Name, p => p.Name, (p, v) => p with { Name = v }, new("A line says it under `portion`."))
        .Need("share", "share", Leaves.Of<Fraction>(), p => p.Share, (p, v) => p with { Share = v }, new("Of the cast; all shares together are 100 %."))
        .Add(new CastField());

    /// <summary>The whole.</summary>
    public static readonly FileForm<Recipe> File = new(
        RecipeFile.Format,
        "A Gylebook recipe",
        new Form<Recipe>(new Recipe { Name = "", Package = new PackageWish(default, "", null), Ferment = [], Ingredients = [] }) { About = "What to brew, whatever the kit. Quantities are text with a unit." }
            .Need("name", "name", Leaves.Name, r => r.Name, (r, v) => r with { Name = v })
            .May("notes", "notes", Leaves.Prose, r => r.Notes, (r, v) => r with { Notes = v }, new("Anything worth remembering; it stays with you when the recipe is published."))
            .May("story", "story", Leaves.Prose, r => r.Story, (r, v) => r with { Story = v }, new("What those read first who brew it after you: Markdown, published with the recipe."))
            .Need("package", "package", Package, r => r.Package, (r, v) => r with { Package = v })
            .May("hold", "what holds", Hold, r => r.Hold, (r, v) => r with { Hold = v })
            .May("mash", "mash", Mash, r => r.Mash, (r, v) => r with { Mash = v })
            .May("liquor", "liquor", Liquor, r => r.Liquor, (r, v) => r with { Liquor = v })
            .May("souring", "souring", Souring, r => r.Souring, (r, v) => r with { Souring = v })
            .May("boil", "boil", Boil, r => r.Boil, (r, v) => r with { Boil = v })
            .May("stand", "stand", Rest, r => r.Stand, (r, v) => r with { Stand = v }, new("A rest after knock-out."))
            .Need("ferment", "fermentation", new ListForm<Rest>(Rest), r => r.Ferment, (r, v) => r with { Ferment = v }, new("Rests one after the other."))
            .MayList("portions", "portions", new ListForm<PortionShare>(Portion) { ItemSaid = "portion" }, r => r.Portions, (r, v) => r with { Portions = v }, new("How the cast is divided; it stays together when left out."))
            .Need("ingredients", "ingredients", new ListForm<IngredientLine>(LineForm.Line) { MatchedBy = [.. FileWords.Kinds.Words] }, r => r.Ingredients, (r, v) => r with { Ingredients = v }, new("All that goes in.")));
}
