using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Interchange.OpenFormats.Tables;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>The tags of a BeerXML document but its ingredients.</summary>
internal static class BeerXmlForms
{
    private const string NoHome = "no field for it here";
    private const string Reckoned = "reckoned anew here, not read";
    private const string OfTheKit = "a recipe of ours goes with any kit: the kit says it";
    private const string Shown = "only to be shown, says the standard, and not to be read";
    private static readonly TextNode Version = new("1");

    /// <summary>What stands where a style must: a recipe of ours is of none.</summary>
    private static readonly ObjectNode NoStyle = Node.Object([
        ("NAME", new TextNode("None")), ("CATEGORY", new TextNode("None")), ("VERSION", Version), ("CATEGORY_NUMBER", new TextNode("0")), ("STYLE_LETTER", new TextNode("")),
        ("STYLE_GUIDE", new TextNode("None")), ("TYPE", new TextNode("Ale")),
        .. new[] { "OG_MIN", "OG_MAX", "FG_MIN", "FG_MAX", "IBU_MIN", "IBU_MAX", "COLOR_MIN", "COLOR_MAX" }.Select(tag => (tag, (Node)new TextNode("0")))]);

    private static readonly OpenForm<OpenMashStep> MashStep = new OpenForm<OpenMashStep>(new OpenMashStep())
        .Placed((s, path) => s with { Path = path })
        .Row("NAME", "(told, not kept)", OpenLeaves.Text, s => s.Name, (s, v) => s with { Name = v }, "rests have no names here")
        .Always("VERSION", Version)
        .Row("TYPE", "mash.rests", OpenLeaves.Word(BeerXmlWords.MashSteps), s => s.Type, (s, v) => s with { Type = v })
        .Row("INFUSE_AMOUNT", "liquor.strike", BeerXmlLeaves.Litres, s => s.Amount, (s, v) => s with { Amount = v })
        .Row("STEP_TEMP", "mash.rests[].temperature", BeerXmlLeaves.Celsius, s => s.Temperature, (s, v) => s with { Temperature = v })
        .Row("STEP_TIME", "mash.rests[].time", BeerXmlLeaves.Minutes, s => s.Time, (s, v) => s with { Time = v })
        .Left(Reckoned, "RAMP_TIME", "END_TEMP")
        .Left(Shown, "DESCRIPTION", "WATER_GRAIN_RATIO", "DECOCTION_AMT", "INFUSE_TEMP", "DISPLAY_STEP_TEMP", "DISPLAY_INFUSE_AMT");

    private static readonly OpenForm<OpenMash> Mash = new OpenForm<OpenMash>(new OpenMash())
        .Placed((m, path) => m with { Path = path })
        .Row("NAME", "mash.method", OpenLeaves.Text, m => m.Name, (m, v) => m with { Name = v })
        .Always("VERSION", Version)
        .Row("GRAIN_TEMP", "", BeerXmlLeaves.Celsius, m => m.GrainTemperature, (m, v) => m with { GrainTemperature = v }, OfTheKit)
        .Rows("MASH_STEPS", "mash.rests", OpenLeaves.ListOf(MashStep), m => m.Steps, (m, v) => m with { Steps = v }, isAlwaysThere: true)
        .Row("SPARGE_TEMP", "mash.sparge.temperature", BeerXmlLeaves.Celsius, m => m.SpargeTemperature, (m, v) => m with { SpargeTemperature = v }, "the format has no litres for it")
        .Left(NoHome, "NOTES")
        .Left(OfTheKit, "TUN_TEMP", "TUN_WEIGHT", "TUN_SPECIFIC_HEAT", "EQUIP_ADJUST", "PH")
        .Left(Shown, "DISPLAY_GRAIN_TEMP", "DISPLAY_TUN_TEMP", "DISPLAY_SPARGE_TEMP", "DISPLAY_TUN_WEIGHT");

    private static readonly OpenForm<XmlEquipment> Equipment = new OpenForm<XmlEquipment>(new XmlEquipment())
        .Placed((e, path) => e with { Path = path })
        .Row("NAME", "name", OpenLeaves.Text, e => e.Name, (e, v) => e with { Name = v })
        .Always("VERSION", Version)
        .Row("BOIL_SIZE", "kettle.evaporation", BeerXmlLeaves.Litres, e => e.BoilSize, (e, v) => e with { BoilSize = v }, "times EVAP_RATE")
        .Row("EVAP_RATE", "kettle.evaporation", BeerXmlLeaves.Percent, e => e.Evaporation, (e, v) => e with { Evaporation = v }, "% an hour, of BOIL_SIZE")
        .Row("TRUB_CHILLER_LOSS", "kettle.leftBehind", BeerXmlLeaves.Litres, e => e.KettleKeeps, (e, v) => e with { KettleKeeps = v })
        .Row("TUN_VOLUME", "tun.brim", BeerXmlLeaves.Litres, e => e.TunHolds, (e, v) => e with { TunHolds = v })
        .Row("LAUTER_DEADSPACE", "tun.deadSpace", BeerXmlLeaves.Litres, e => e.TunKeeps, (e, v) => e with { TunKeeps = v })
        .Row("TUN_WEIGHT", "tun.heatCapacity", BeerXmlLeaves.Kilograms, e => e.TunWeight, (e, v) => e with { TunWeight = v }, "times TUN_SPECIFIC_HEAT")
        .Row("TUN_SPECIFIC_HEAT", "tun.heatCapacity", OpenLeaves.Number, e => e.TunHeat, (e, v) => e with { TunHeat = v }, "cal/(g °C), times TUN_WEIGHT")
        .Left("a recipe says it here", "BATCH_SIZE", "BOIL_TIME", "TOP_UP_WATER", "TOP_UP_KETTLE")
        .Left(NoHome, "CALC_BOIL_VOLUME", "HOP_UTILIZATION", "NOTES")
        .Left(Shown, "DISPLAY_BOIL_SIZE", "DISPLAY_BATCH_SIZE", "DISPLAY_TUN_VOLUME", "DISPLAY_TUN_WEIGHT", "DISPLAY_TOP_UP_WATER", "DISPLAY_TRUB_CHILLER_LOSS", "DISPLAY_LAUTER_DEADSPACE", "DISPLAY_TOP_UP_KETTLE");

    /// <summary>A recipe.</summary>
    public static readonly OpenForm<XmlRecipe> Recipe = new OpenForm<XmlRecipe>(new XmlRecipe())
        .Placed((r, path) => r with { Open = r.Open with { Path = path } })
        .Row("NAME", "name", OpenLeaves.Text, r => r.Open.Name, (r, v) => r with { Open = r.Open with { Name = v } })
        .Always("VERSION", Version)
        .Row("TYPE", "mash.method", OpenLeaves.Word(BeerXmlWords.Recipes), r => r.Open.Type, (r, v) => r with { Open = r.Open with { Type = v } })
        .Row("BREWER", "", OpenLeaves.Text, r => r.Open.Author, (r, v) => r with { Open = r.Open with { Author = v } }, NoHome)
        .Row("BATCH_SIZE", "package.volume", BeerXmlLeaves.Litres, r => r.Open.Batch, (r, v) => r with { Open = r.Open with { Batch = v } }, "litres into the fermenter there, in the package here")
        .Row("BOIL_SIZE", "", BeerXmlLeaves.Litres, r => r.Open.PreBoil, (r, v) => r with { Open = r.Open with { PreBoil = v } }, Reckoned)
        .Row("BOIL_TIME", "boil.time", BeerXmlLeaves.Minutes, r => r.Open.BoilTime, (r, v) => r with { Open = r.Open with { BoilTime = v } })
        .Row("EFFICIENCY", "", BeerXmlLeaves.WholePercent, r => r.Open.Brewhouse, (r, v) => r with { Open = r.Open with { Brewhouse = v } }, OfTheKit)
        .Rows("HOPS", "ingredients", OpenLeaves.ListOf(BeerXmlThings.Hop), r => r.Open.Hops, (r, v) => r with { Open = r.Open with { Hops = v } }, isAlwaysThere: true)
        .Rows("FERMENTABLES", "ingredients", OpenLeaves.ListOf(BeerXmlThings.Fermentable), r => r.Open.Fermentables, (r, v) => r with { Open = r.Open with { Fermentables = v } }, isAlwaysThere: true)
        .Rows("MISCS", "ingredients", OpenLeaves.ListOf(BeerXmlThings.Misc), r => r.Open.Miscellaneous, (r, v) => r with { Open = r.Open with { Miscellaneous = v } }, isAlwaysThere: true)
        .Rows("YEASTS", "ingredients", OpenLeaves.ListOf(BeerXmlThings.Yeast), r => r.Open.Cultures, (r, v) => r with { Open = r.Open with { Cultures = v } }, isAlwaysThere: true)
        .Rows("WATERS", "a water plan", OpenLeaves.ListOf(BeerXmlThings.Water), r => r.Open.Waters, (r, v) => r with { Open = r.Open with { Waters = v } }, isAlwaysThere: true)
        .Row("MASH", "mash", Mash, r => r.Open.Mash, (r, v) => r with { Open = r.Open with { Mash = v } })
        .Row("EQUIPMENT", "a kit", Equipment, r => r.Equipment, (r, v) => r with { Equipment = v })
        .Row("NOTES", "notes", OpenLeaves.Text, r => r.Open.Notes, (r, v) => r with { Open = r.Open with { Notes = v } })
        .Row("CARBONATION", "package.carbonation", OpenLeaves.Number, r => r.Open.Carbonation, (r, v) => r with { Open = r.Open with { Carbonation = v } }, "volumes; above 6, g/L")
        .Row("FERMENTATION_STAGES", "ferment", OpenLeaves.Number, r => r.Stages, (r, v) => r with { Stages = v })
        .Stage("PRIMARY", r => r.Primary, (r, v) => r with { Primary = v })
        .Stage("SECONDARY", r => r.Secondary, (r, v) => r with { Secondary = v })
        .Stage("TERTIARY", r => r.Tertiary, (r, v) => r with { Tertiary = v })
        .Left(NoHome, "ASST_BREWER", "TASTE_NOTES", "TASTE_RATING", "DATE", "FORCED_CARBONATION", "PRIMING_SUGAR_NAME", "CARBONATION_TEMP", "PRIMING_SUGAR_EQUIV", "KEG_PRIMING_FACTOR", "AGE", "AGE_TEMP")
        .Left("a guideline has no file here", "STYLE")
        .Left(Reckoned, "OG", "FG")
        .Left(Shown, "EST_OG", "EST_FG", "EST_COLOR", "IBU", "IBU_METHOD", "EST_ABV", "ABV", "ACTUAL_EFFICIENCY", "CALORIES", "DISPLAY_BATCH_SIZE", "DISPLAY_BOIL_SIZE", "DISPLAY_OG", "DISPLAY_FG", "DISPLAY_PRIMARY_TEMP", "DISPLAY_SECONDARY_TEMP", "DISPLAY_TERTIARY_TEMP", "DISPLAY_AGE_TEMP", "CARBONATION_USED", "DISPLAY_CARB_TEMP");

    /// <summary>The sets a document may hold.</summary>
    public static readonly OpenForm<XmlBook> Book = new OpenForm<XmlBook>(new XmlBook())
        .Rows("RECIPES", "recipes", OpenLeaves.ListOf(Recipe), b => b.Recipes, (b, v) => b with { Recipes = v })
        .Rows("FERMENTABLES", "malts, shelf, foods", OpenLeaves.ListOf(BeerXmlThings.Fermentable), b => b.Book.Fermentables, (b, v) => b with { Book = b.Book with { Fermentables = v } })
        .Rows("HOPS", "hops", OpenLeaves.ListOf(BeerXmlThings.Hop), b => b.Book.Hops, (b, v) => b with { Book = b.Book with { Hops = v } })
        .Rows("YEASTS", "yeasts", OpenLeaves.ListOf(BeerXmlThings.Yeast), b => b.Book.Cultures, (b, v) => b with { Book = b.Book with { Cultures = v } })
        .Rows("MISCS", "shelf, foods", OpenLeaves.ListOf(BeerXmlThings.Misc), b => b.Book.Miscellaneous, (b, v) => b with { Book = b.Book with { Miscellaneous = v } })
        .Rows("WATERS", "water plans", OpenLeaves.ListOf(BeerXmlThings.Water), b => b.Book.Waters, (b, v) => b with { Book = b.Book with { Waters = v } })
        .Rows("EQUIPMENTS", "kits", OpenLeaves.ListOf(Equipment), b => b.Equipments, (b, v) => b with { Equipments = v })
        .Left("a guideline has no file here", "STYLES")
        .Left("it stands in a recipe here, and nowhere else", "MASHS");

    /// <summary>The style every recipe must have.</summary>
    public static ObjectNode Style => NoStyle;

    /// <summary>Each table of the format with what it is of, for the guide.</summary>
    public static IReadOnlyList<(string Of, IReadOnlyList<OpenField> Fields)> Tables { get; } =
    [
        ("the document", Book.Fields), ("RECIPE", Recipe.Fields), ("FERMENTABLE", BeerXmlThings.Fermentable.Fields), ("HOP", BeerXmlThings.Hop.Fields), ("YEAST", BeerXmlThings.Yeast.Fields),
        ("MISC", BeerXmlThings.Misc.Fields), ("WATER", BeerXmlThings.Water.Fields), ("MASH", Mash.Fields), ("MASH_STEP", MashStep.Fields), ("EQUIPMENT", Equipment.Fields),
    ];

    private static OpenForm<XmlRecipe> Stage(this OpenForm<XmlRecipe> form, string tag, Func<XmlRecipe, OpenStep?> of, Func<XmlRecipe, OpenStep, XmlRecipe> with) => form
        .Row($"{tag}_AGE", "ferment[].time", BeerXmlLeaves.Days, r => of(r)?.Time, (r, v) => with(r, (of(r) ?? new()) with { Time = v }))
        .Row($"{tag}_TEMP", "ferment[].temperature", BeerXmlLeaves.Celsius, r => of(r)?.Start, (r, v) => with(r, (of(r) ?? new()) with { Start = v }));
}

/// <summary>A recipe with the tags that BeerXML alone has.</summary>
internal sealed record XmlRecipe
{
    public OpenRecipe Open { get; init; } = new();

    public XmlEquipment? Equipment { get; init; }

    public double? Stages { get; init; }

    public OpenStep? Primary { get; init; }

    public OpenStep? Secondary { get; init; }

    public OpenStep? Tertiary { get; init; }
}

/// <summary>Equipment as BeerXML has it: one kettle and one tun.</summary>
internal sealed record XmlEquipment
{
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    public Entered<VolumeAt20C>? BoilSize { get; init; }

    /// <summary>Boiled off in an hour, of the boil's litres.</summary>
    public Entered<Fraction>? Evaporation { get; init; }

    public Entered<VolumeAt20C>? KettleKeeps { get; init; }

    public Entered<VolumeAt20C>? TunHolds { get; init; }

    public Entered<VolumeAt20C>? TunKeeps { get; init; }

    public Entered<Mass>? TunWeight { get; init; }

    /// <summary>cal/(g °C).</summary>
    public double? TunHeat { get; init; }
}

/// <summary>A document with the records that BeerXML alone has.</summary>
internal sealed record XmlBook
{
    public OpenBook Book { get; init; } = new();

    public IReadOnlyList<XmlRecipe> Recipes { get; init; } = [];

    public IReadOnlyList<XmlEquipment> Equipments { get; init; } = [];
}
