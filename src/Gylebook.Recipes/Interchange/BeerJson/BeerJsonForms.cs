using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Interchange.OpenFormats.Tables;

namespace Gylebook.Recipes.Interchange.BeerJson;

/// <summary>The fields of a BeerJSON document but its ingredients.</summary>
internal static class BeerJsonForms
{
    private const string NoHome = "no field for it here";
    private const string Reckoned = "reckoned anew here, not read";
    private const string OfTheKit = "a recipe of ours goes with any kit: the kit says it";

    private static readonly OpenForm<OpenMashStep> MashStep = new OpenForm<OpenMashStep>(new OpenMashStep())
        .Placed((s, path) => s with { Path = path })
        .Row("name", "mash.sparge.method, souring.culture", OpenLeaves.Text, s => s.Name, (s, v) => s with { Name = v })
        .Row("type", "mash.rests, mash.sparge, souring", OpenLeaves.Word(BeerJsonWords.MashSteps), s => s.Type, (s, v) => s with { Type = v })
        .Row("amount", "liquor.strike, mash.sparge.volume", BeerJsonLeaves.Volume, s => s.Amount, (s, v) => s with { Amount = v })
        .Row("step_temperature", "mash.rests[].temperature", BeerJsonLeaves.Temperature, s => s.Temperature, (s, v) => s with { Temperature = v })
        .Row("step_time", "mash.rests[].time", BeerJsonLeaves.Time, s => s.Time, (s, v) => s with { Time = v })
        .Row("end_ph", "souring.ph", BeerJsonLeaves.Ph, s => s.EndPh, (s, v) => s with { EndPh = v })
        .Left(Reckoned, "ramp_time", "end_temperature", "water_grain_ratio", "infuse_temperature", "start_ph");

    private static readonly OpenForm<OpenMash> Mash = new OpenForm<OpenMash>(new OpenMash())
        .Placed((m, path) => m with { Path = path })
        .Row("name", "mash.method", OpenLeaves.Text, m => m.Name, (m, v) => m with { Name = v })
        .Row("grain_temperature", "", BeerJsonLeaves.Temperature, m => m.GrainTemperature, (m, v) => m with { GrainTemperature = v }, OfTheKit)
        .Rows("mash_steps", "mash.rests", OpenLeaves.ListOf(MashStep), m => m.Steps, (m, v) => m with { Steps = v })
        .Left(NoHome, "notes");

    private static readonly OpenForm<OpenStep> BoilStep = new OpenForm<OpenStep>(new OpenStep())
        .Placed((s, path) => s with { Path = path })
        .Row("name", "(told, not kept)", OpenLeaves.Text, s => s.Name, (s, v) => s with { Name = v }, "a step is known by its temperature")
        .Row("start_temperature", "stand.temperature", BeerJsonLeaves.Temperature, s => s.Start, (s, v) => s with { Start = v })
        .Row("end_temperature", "stand.temperature", BeerJsonLeaves.Temperature, s => s.End, (s, v) => s with { End = v })
        .Row("step_time", "stand.time", BeerJsonLeaves.Time, s => s.Time, (s, v) => s with { Time = v })
        .Left(Reckoned, "ramp_time", "start_gravity", "end_gravity", "start_ph", "end_ph", "chilling_type");

    private static readonly OpenForm<OpenRecipe> Boil = new OpenForm<OpenRecipe>(new OpenRecipe())
        .Row("pre_boil_size", "", BeerJsonLeaves.Volume, r => r.PreBoil, (r, v) => r with { PreBoil = v }, Reckoned)
        .Row("boil_time", "boil.time", BeerJsonLeaves.Time, r => r.BoilTime, (r, v) => r with { BoilTime = v })
        .Rows("boil_steps", "stand", OpenLeaves.ListOf(BoilStep), r => r.BoilSteps, (r, v) => r with { BoilSteps = v })
        .Left(NoHome, "name", "description", "notes");

    private static readonly OpenForm<OpenStep> FermentStep = new OpenForm<OpenStep>(new OpenStep())
        .Placed((s, path) => s with { Path = path })
        .Row("name", "(told, not kept)", OpenLeaves.Text, s => s.Name, (s, v) => s with { Name = v }, "rests have no names here")
        .Row("start_temperature", "ferment[].temperature", BeerJsonLeaves.Temperature, s => s.Start, (s, v) => s with { Start = v })
        .Row("end_temperature", "ferment[].temperature", BeerJsonLeaves.Temperature, s => s.End, (s, v) => s with { End = v }, "a rest holds one temperature: the one it starts at")
        .Row("step_time", "ferment[].time", BeerJsonLeaves.Time, s => s.Time, (s, v) => s with { Time = v })
        .Left(Reckoned, "free_rise", "start_gravity", "end_gravity", "start_ph", "end_ph", "vessel", "vessel_pressure");

    private static readonly OpenForm<OpenRecipe> Fermentation = new OpenForm<OpenRecipe>(new OpenRecipe())
        .Always("name", new Documents.TextNode("Fermentation"))
        .Rows("fermentation_steps", "ferment", OpenLeaves.ListOf(FermentStep), r => r.Ferment, (r, v) => r with { Ferment = v })
        .Left(NoHome, "description", "notes");

    private static readonly OpenForm<OpenPackage> Package = new OpenForm<OpenPackage>(new OpenPackage())
        .Placed((p, path) => p with { Path = path })
        .Row("name", "package.in", OpenLeaves.Text, p => p.Name, (p, v) => p with { Name = v })
        .Row("type", "package.in", OpenLeaves.Word(BeerJsonWords.Packages), p => p.Type, (p, v) => p with { Type = v })
        .Row("carbonation", "package.carbonation", OpenLeaves.Number, p => p.Carbonation, (p, v) => p with { Carbonation = v }, "volumes; above 6, g/L")
        .Left(NoHome, "package_date", "start_temperature", "end_temperature", "step_time", "start_gravity", "end_gravity", "start_ph", "end_ph", "vessel_volume", "vessel_quantity", "graphics");

    private static readonly OpenForm<OpenRecipe> Packaging = new OpenForm<OpenRecipe>(new OpenRecipe())
        .Always("name", new Documents.TextNode("Packaging"))
        .Row("packaged_volume", "package.volume", BeerJsonLeaves.Volume, r => r.Packaged, (r, v) => r with { Packaged = v })
        .Rows("packaging_vessels", "package.in", OpenLeaves.ListOf(Package), r => r.Packages, (r, v) => r with { Packages = v })
        .Left(NoHome, "description", "notes");

    private static readonly OpenForm<OpenRecipe> Efficiency = new OpenForm<OpenRecipe>(new OpenRecipe())
        .Row("brewhouse", "", BeerJsonLeaves.Percent, r => r.Brewhouse, (r, v) => r with { Brewhouse = v }, OfTheKit)
        .Left(OfTheKit, "conversion", "lauter", "mash");

    private static readonly OpenForm<OpenRecipe> Ingredients = new OpenForm<OpenRecipe>(new OpenRecipe())
        .Rows("fermentable_additions", "ingredients", OpenLeaves.ListOf(BeerJsonThings.Fermentable), r => r.Fermentables, (r, v) => r with { Fermentables = v }, isAlwaysThere: true)
        .Rows("hop_additions", "ingredients", OpenLeaves.ListOf(BeerJsonThings.Hop), r => r.Hops, (r, v) => r with { Hops = v })
        .Rows("miscellaneous_additions", "ingredients", OpenLeaves.ListOf(BeerJsonThings.Misc), r => r.Miscellaneous, (r, v) => r with { Miscellaneous = v })
        .Rows("culture_additions", "ingredients", OpenLeaves.ListOf(BeerJsonThings.Culture), r => r.Cultures, (r, v) => r with { Cultures = v })
        .Rows("water_additions", "a water plan", OpenLeaves.ListOf(BeerJsonThings.Water), r => r.Waters, (r, v) => r with { Waters = v });

    private static readonly OpenForm<OpenRecipe> Bitterness = new OpenForm<OpenRecipe>(new OpenRecipe())
        .Row("value", "", BeerJsonLeaves.Bitterness, r => r.Results.Bitterness, (r, v) => r with { Results = r.Results with { Bitterness = v } }, Reckoned)
        .Left(Reckoned, "method");

    /// <summary>A recipe.</summary>
    public static readonly OpenForm<OpenRecipe> Recipe = new OpenForm<OpenRecipe>(new OpenRecipe())
        .Placed((r, path) => r with { Path = path })
        .Row("name", "name", OpenLeaves.Text, r => r.Name, (r, v) => r with { Name = v })
        .Row("type", "mash.method", OpenLeaves.Word(BeerJsonWords.Recipes), r => r.Type, (r, v) => r with { Type = v })
        .Row("author", "", OpenLeaves.Text, r => r.Author, (r, v) => r with { Author = v }, NoHome)
        .Row("notes", "notes", OpenLeaves.Text, r => r.Notes, (r, v) => r with { Notes = v })
        .Row("batch_size", "package.volume", BeerJsonLeaves.Volume, r => r.Batch, (r, v) => r with { Batch = v }, "litres into the fermenter there, in the package here")
        .Inside("efficiency", Efficiency, r => r.Brewhouse is not null)
        .Inside("ingredients", Ingredients, _ => true)
        .Row("mash", "mash", Mash, r => r.Mash, (r, v) => r with { Mash = v })
        .Inside("boil", Boil, r => r.BoilTime is not null)
        .Inside("fermentation", Fermentation, r => r.Ferment.Count > 0)
        .Inside("packaging", Packaging, r => r.Packaged is not null || r.Packages.Count > 0)
        .Row("original_gravity", "", BeerJsonLeaves.Gravity, r => r.Results.OriginalGravity, (r, v) => r with { Results = r.Results with { OriginalGravity = v } }, Reckoned)
        .Row("final_gravity", "", BeerJsonLeaves.Gravity, r => r.Results.FinalGravity, (r, v) => r with { Results = r.Results with { FinalGravity = v } }, Reckoned)
        .Row("alcohol_by_volume", "", BeerJsonLeaves.Percent, r => r.Results.Alcohol, (r, v) => r with { Results = r.Results with { Alcohol = v } }, Reckoned)
        .Inside("ibu_estimate", Bitterness, r => r.Results.Bitterness is not null)
        .Row("color_estimate", "", BeerJsonLeaves.BeerColour, r => r.Results.Colour, (r, v) => r with { Results = r.Results with { Colour = v } }, Reckoned)
        .Row("beer_pH", "", BeerJsonLeaves.Ph, r => r.Results.Ph, (r, v) => r with { Results = r.Results with { Ph = v } }, Reckoned)
        .Row("carbonation", "package.carbonation", OpenLeaves.Number, r => r.Carbonation, (r, v) => r with { Carbonation = v }, "volumes; above 6, g/L")
        .Left(Reckoned, "apparent_attenuation", "calories_per_pint")
        .Left(NoHome, "coauthor", "created", "style", "taste");

    private static readonly OpenForm<OpenVessel> Vessel = new OpenForm<OpenVessel>(new OpenVessel())
        .Placed((v, path) => v with { Path = path })
        .Row("name", "vessels[].name", OpenLeaves.Text, v => v.Name, (v, to) => v with { Name = to })
        .Row("form", "kettle, tun, fermenter, packages", OpenLeaves.Word(BeerJsonWords.Vessels), v => v.Form, (v, to) => v with { Form = to })
        .Row("maximum_volume", "brim", BeerJsonLeaves.Volume, v => v.Holds, (v, to) => v with { Holds = to })
        .Row("loss", "kettle.leftBehind, tun.deadSpace, racking.leftBehind", BeerJsonLeaves.Volume, v => v.Keeps, (v, to) => v with { Keeps = to })
        .Row("grain_absorption_rate", "tun.liquorKept", BeerJsonLeaves.SpecificVolume, v => v.GrainKeeps, (v, to) => v with { GrainKeeps = to })
        .Row("boil_rate_per_hour", "kettle.evaporation", BeerJsonLeaves.Volume, v => v.BoiledOff, (v, to) => v with { BoiledOff = to })
        .Row("weight", "tun.heatCapacity", BeerJsonLeaves.Mass, v => v.Weight, (v, to) => v with { Weight = to }, "times specific_heat")
        .Row("specific_heat", "tun.heatCapacity", BeerJsonLeaves.SpecificHeat, v => v.SpecificHeat, (v, to) => v with { SpecificHeat = to }, "times weight")
        .Quiet("type")
        .Left(NoHome, "drain_rate_per_minute", "notes");

    private static readonly OpenForm<OpenKit> Kit = new OpenForm<OpenKit>(new OpenKit())
        .Placed((k, path) => k with { Path = path })
        .Row("name", "name", OpenLeaves.Text, k => k.Name, (k, v) => k with { Name = v })
        .Rows("equipment_items", "kettle, tun, fermenter, packages", OpenLeaves.ListOf(Vessel), k => k.Vessels, (k, v) => k with { Vessels = v });

    /// <summary>What stands under <c>beerjson</c>.</summary>
    public static readonly OpenForm<OpenBook> Book = new OpenForm<OpenBook>(new OpenBook())
        .Quiet("version")
        .Rows("recipes", "recipes", OpenLeaves.ListOf(Recipe), b => b.Recipes, (b, v) => b with { Recipes = v })
        .Rows("fermentables", "malts, shelf, foods", OpenLeaves.ListOf(BeerJsonThings.Fermentable), b => b.Fermentables, (b, v) => b with { Fermentables = v })
        .Rows("hop_varieties", "hops", OpenLeaves.ListOf(BeerJsonThings.Hop), b => b.Hops, (b, v) => b with { Hops = v })
        .Rows("cultures", "yeasts", OpenLeaves.ListOf(BeerJsonThings.Culture), b => b.Cultures, (b, v) => b with { Cultures = v })
        .Rows("miscellaneous_ingredients", "shelf, foods", OpenLeaves.ListOf(BeerJsonThings.Misc), b => b.Miscellaneous, (b, v) => b with { Miscellaneous = v })
        .Rows("profiles", "water plans", OpenLeaves.ListOf(BeerJsonThings.Water), b => b.Waters, (b, v) => b with { Waters = v })
        .Rows("equipments", "kits", OpenLeaves.ListOf(Kit), b => b.Kits, (b, v) => b with { Kits = v })
        .Left("a guideline has no file here", "styles")
        .Left("it stands in a recipe here, and nowhere else", "mashes", "fermentations", "boil", "packaging");

    /// <summary>Each table of the format with what it is of, for the guide.</summary>
    public static IReadOnlyList<(string Of, IReadOnlyList<OpenField> Fields)> Tables { get; } =
    [
        ("beerjson", Book.Fields), ("recipes[]", Recipe.Fields), ("recipes[].efficiency", Efficiency.Fields), ("recipes[].ingredients", Ingredients.Fields),
        ("fermentables[], fermentable_additions[]", BeerJsonThings.Fermentable.Fields), ("hop_varieties[], hop_additions[]", BeerJsonThings.Hop.Fields),
        ("cultures[], culture_additions[]", BeerJsonThings.Culture.Fields), ("miscellaneous_ingredients[], miscellaneous_additions[]", BeerJsonThings.Misc.Fields),
        ("profiles[], water_additions[]", BeerJsonThings.Water.Fields), ("recipes[].mash", Mash.Fields), ("mash_steps[]", MashStep.Fields),
        ("recipes[].boil", Boil.Fields), ("boil_steps[]", BoilStep.Fields), ("fermentation_steps[]", FermentStep.Fields), ("recipes[].packaging", Packaging.Fields),
        ("packaging_vessels[]", Package.Fields), ("equipment_items[]", Vessel.Fields),
    ];
}
