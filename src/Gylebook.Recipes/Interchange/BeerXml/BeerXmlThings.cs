using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Interchange.OpenFormats.Tables;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>The tags of BeerXML's ingredients.</summary>
internal static class BeerXmlThings
{
    private const string NoHome = "no field for it here";
    private const string Shown = "only to be shown, says the standard, and not to be read";
    private static readonly TextNode Version = new("1");
    private static readonly string[] Displayed = ["DISPLAY_AMOUNT", "DISPLAY_TIME", "DISPLAY_COLOR", "INVENTORY", "POTENTIAL", "DISP_MIN_TEMP", "DISP_MAX_TEMP", "CULTURE_DATE"];

    /// <summary>A malt, an extract, a sugar or a food.</summary>
    public static readonly OpenForm<OpenFermentable> Fermentable = new OpenForm<OpenFermentable>(new OpenFermentable())
        .Placed((f, path) => f with { Path = path })
        .Row("NAME", "as", OpenLeaves.Text, f => f.Name, (f, v) => f with { Name = v })
        .Always("VERSION", Version)
        .Row("TYPE", "malt, extract, sugar, food", OpenLeaves.Word(BeerXmlWords.Fermentables), f => f.Type, (f, v) => f with { Type = v })
        .Row("AMOUNT", "amount", Weighed, f => f.Amount, (f, v) => f with { Amount = v }, "kg")
        .Row("YIELD", "figures.extract", BeerXmlLeaves.WholePercent, f => f.Yield, (f, v) => f with { Yield = v }, "grain: of dry matter")
        .Row("COLOR", "colour", BeerXmlLeaves.Lovibond, f => f.Colour, (f, v) => f with { Colour = v }, "Lovibond; SRM for all but grain")
        .Row("ADD_AFTER_BOIL", "at", OpenLeaves.Flag, f => f.IsAddedAfterBoil, (f, v) => f with { IsAddedAfterBoil = v })
        .Row("MOISTURE", "figures.moisture", BeerXmlLeaves.Percent, f => f.Moisture, (f, v) => f with { Moisture = v })
        .Row("DIASTATIC_POWER", "figures.diastaticPower", BeerXmlLeaves.Lintner, f => f.DiastaticPower, (f, v) => f with { DiastaticPower = v })
        .Row("RECOMMEND_MASH", "malt or food", OpenLeaves.Flag, f => f.WantsMash, (f, v) => f with { WantsMash = v })
        .Row("NOTES", "notes", OpenLeaves.Text, f => f.ProductId ?? f.Notes, Noted)
        .Left(NoHome, "ORIGIN", "SUPPLIER", "COARSE_FINE_DIFF", "PROTEIN", "MAX_IN_BATCH", "IBU_GAL_PER_LB")
        .Left(Shown, Displayed);

    /// <summary>A hop.</summary>
    public static readonly OpenForm<OpenHop> Hop = new OpenForm<OpenHop>(new OpenHop())
        .Placed((h, path) => h with { Path = path })
        .Row("NAME", "hop", OpenLeaves.Text, h => h.Name, (h, v) => h with { Name = v })
        .Always("VERSION", Version)
        .Row("ALPHA", "alpha", BeerXmlLeaves.Percent, h => h.Alpha, (h, v) => h with { Alpha = v })
        .Row("AMOUNT", "amount", Weighed, h => h.Amount, (h, v) => h with { Amount = v }, "kg")
        .Row("USE", "at", OpenLeaves.Word(BeerXmlWords.HopUses), h => h.Timing?.Use, (h, v) => h with { Timing = (h.Timing ?? new()) with { Use = v } })
        .Row("TIME", "at", BeerXmlLeaves.Minutes, h => h.Timing?.Time, (h, v) => h with { Timing = (h.Timing ?? new()) with { Time = v } }, "minutes; of a dry hop, how long it stays in")
        .Row("FORM", "form", OpenLeaves.Word(BeerXmlWords.HopShapes), h => h.Form, (h, v) => h with { Form = v })
        .Row("BETA", "figures.beta", BeerXmlLeaves.Percent, h => h.Beta, (h, v) => h with { Beta = v }, "of a sheet; a line has none")
        .Row("HSI", "figures.lost", BeerXmlLeaves.Percent, h => h.Lost, (h, v) => h with { Lost = v })
        .Row("NOTES", "notes", OpenLeaves.Text, h => h.ProductId ?? h.Notes, Noted)
        .Left(NoHome, "TYPE", "ORIGIN", "SUBSTITUTES", "HUMULENE", "CARYOPHYLLENE", "COHUMULONE", "MYRCENE")
        .Left(Shown, Displayed);

    /// <summary>A yeast.</summary>
    public static readonly OpenForm<OpenCulture> Yeast = new OpenForm<OpenCulture>(new OpenCulture())
        .Placed((y, path) => y with { Path = path })
        .Row("NAME", "as", OpenLeaves.Text, y => y.Name, (y, v) => y with { Name = v })
        .Always("VERSION", Version)
        .Row("TYPE", "yeast", OpenLeaves.Word(BeerXmlWords.Cultures), y => y.Type, (y, v) => y with { Type = v })
        .Row("FORM", "form", OpenLeaves.Word(BeerXmlWords.CultureForms), y => y.Form, (y, v) => y with { Form = v })
        .Row("AMOUNT", "amount", Poured, y => y.Amount, (y, v) => y with { Amount = v }, "litres, or kg where AMOUNT_IS_WEIGHT")
        .Row("AMOUNT_IS_WEIGHT", "amount", OpenLeaves.Flag, y => IsWeight(y.Amount), (y, v) => y with { Amount = AsWeight(y.Amount, v) })
        .Row("PRODUCT_ID", "yeast", OpenLeaves.Text, y => y.ProductId, (y, v) => y with { ProductId = y.ProductId ?? v }, "an id of ours, in files of ours")
        .Row("ATTENUATION", "attenuation", BeerXmlLeaves.WholePercent, y => y.Attenuation, (y, v) => y with { Attenuation = v })
        .Row("ADD_TO_SECONDARY", "at", OpenLeaves.Flag, y => y.IsAddedToSecondary, (y, v) => y with { IsAddedToSecondary = v })
        .Row("NOTES", "notes", OpenLeaves.Text, y => y.Notes, (y, v) => y with { Notes = v })
        .Left(NoHome, "LABORATORY", "MIN_TEMPERATURE", "MAX_TEMPERATURE", "FLOCCULATION", "BEST_FOR", "TIMES_CULTURED", "MAX_REUSE")
        .Left(Shown, Displayed);

    /// <summary>Anything else.</summary>
    public static readonly OpenForm<OpenMisc> Misc = new OpenForm<OpenMisc>(new OpenMisc())
        .Placed((m, path) => m with { Path = path })
        .Row("NAME", "as", OpenLeaves.Text, m => m.Name, (m, v) => m with { Name = v })
        .Always("VERSION", Version)
        .Row("TYPE", "spice, fining, salt, acid, food, water", OpenLeaves.Word(BeerXmlWords.Miscellaneous), m => m.Type, (m, v) => m with { Type = v })
        .Row("USE", "at", OpenLeaves.Word(BeerXmlWords.MiscUses), m => m.Timing?.Use, (m, v) => m with { Timing = (m.Timing ?? new()) with { Use = v } })
        .Row("TIME", "at", BeerXmlLeaves.Minutes, m => m.Timing?.Time, (m, v) => m with { Timing = (m.Timing ?? new()) with { Time = v } }, "minutes; in the fermenter, how long it stays in")
        .Row("AMOUNT", "amount", Poured, m => m.Amount, (m, v) => m with { Amount = v }, "litres, or kg where AMOUNT_IS_WEIGHT")
        .Row("AMOUNT_IS_WEIGHT", "amount", OpenLeaves.Flag, m => IsWeight(m.Amount), (m, v) => m with { Amount = AsWeight(m.Amount, v) })
        .Row("NOTES", "notes", OpenLeaves.Text, m => m.ProductId ?? m.Notes, Noted)
        .Left(NoHome, "USE_FOR")
        .Left(Shown, Displayed);

    /// <summary>A water.</summary>
    public static readonly OpenForm<OpenWater> Water = new OpenForm<OpenWater>(new OpenWater())
        .Placed((w, path) => w with { Path = path })
        .Row("NAME", "sources[].name", OpenLeaves.Text, w => w.Name, (w, v) => w with { Name = v })
        .Always("VERSION", Version)
        .Row("AMOUNT", "sources[].share", BeerXmlLeaves.Litres, w => w.Amount, (w, v) => w with { Amount = v }, "beside the others")
        .Row("CALCIUM", "report.calcium", BeerXmlLeaves.Ppm, w => w.Calcium, (w, v) => w with { Calcium = v })
        .Row("BICARBONATE", "report.bicarbonate", BeerXmlLeaves.Ppm, w => w.Bicarbonate, (w, v) => w with { Bicarbonate = v })
        .Row("SULFATE", "report.sulphate", BeerXmlLeaves.Ppm, w => w.Sulphate, (w, v) => w with { Sulphate = v })
        .Row("CHLORIDE", "report.chloride", BeerXmlLeaves.Ppm, w => w.Chloride, (w, v) => w with { Chloride = v })
        .Row("SODIUM", "report.sodium", BeerXmlLeaves.Ppm, w => w.Sodium, (w, v) => w with { Sodium = v })
        .Row("MAGNESIUM", "report.magnesium", BeerXmlLeaves.Ppm, w => w.Magnesium, (w, v) => w with { Magnesium = v })
        .Row("PH", "report.ph", OpenLeaves.Number, w => w.Ph, (w, v) => w with { Ph = v })
        .Row("NOTES", "notes", OpenLeaves.Text, w => w.Notes, (w, v) => w with { Notes = v })
        .Left(Shown, Displayed);

    private static OpenValue<OpenAmount> Weighed => AmountValue.Kilograms;

    private static OpenValue<OpenAmount> Poured => AmountValue.Litres;

    /// <summary>Notes; in files of ours what the line is of.</summary>
    private static T Noted<T>(T thing, string text)
        where T : OpenThing => OpenProduct.Read(text) is null ? thing with { Notes = text } : thing with { ProductId = text };

    private static bool? IsWeight(OpenAmount? amount) => amount?.Weighed is { } weighed ? weighed.Mass is not null : null;

    /// <summary>The same number of kilograms, where it turns out to be a weight.</summary>
    private static OpenAmount? AsWeight(OpenAmount? amount, bool isWeight) => isWeight && amount?.Weighed is { Volume: { } volume }
        && OpenUnits.TryMake(volume.Text.Replace("mL", "g", StringComparison.Ordinal).Replace("L", "kg", StringComparison.Ordinal), out Entered<Mass> mass, out _)
        ? new OpenAmount(new Amount(mass, null), null)
        : amount;

    /// <summary>A mass, or a volume, whichever the tag counts.</summary>
    private sealed class AmountValue : OpenValue<OpenAmount>
    {
        private readonly bool _isMass;

        private AmountValue(bool isMass) => _isMass = isMass;

        public static AmountValue Kilograms { get; } = new(isMass: true);

        public static AmountValue Litres { get; } = new(isMass: false);

        public override bool TryRead(Node node, OpenCursor at, out OpenAmount value)
        {
            if (_isMass)
            {
                bool isRead = BeerXmlLeaves.Kilograms.TryRead(node, at, out Entered<Mass> mass);
                value = new OpenAmount(new Amount(mass, null), null);
                return isRead;
            }

            bool isPoured = BeerXmlLeaves.Litres.TryRead(node, at, out Entered<VolumeAt20C> volume);
            value = new OpenAmount(new Amount(null, volume), null);
            return isPoured;
        }

        public override Node Write(OpenAmount value, OpenCursor at) => value.Weighed switch
        {
            { Mass: { } mass } => BeerXmlLeaves.Kilograms.Write(mass, at),
            { Volume: { } volume } => BeerXmlLeaves.Litres.Write(volume, at),
            _ => new TextNode("0"),
        };
    }
}
