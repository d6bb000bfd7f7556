using Gylebook.Recipes.Checks;
using Gylebook.Recipes.Data;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The fields of the sheets a brewer keeps of malts, hops, yeasts and what else is on the shelf, in the order of their files.</summary>
internal static class LarderForms
{
    /// <summary>Ends of a malt's extract, % of dry matter: those of its widths in <c>data/priors.csv</c>.</summary>
    internal const double LeastExtractPercent = 50, MostExtractPercent = 95;

    private static readonly WordTable<IngredientKind> ShelfKinds = new(
        [.. new[] { IngredientKind.Salt, IngredientKind.Acid, IngredientKind.Sugar, IngredientKind.Extract, IngredientKind.Spice, IngredientKind.Fining, IngredientKind.Water }
            .Select(kind => (kind, FileWords.Kinds.Word(kind)))]);

    private static readonly Form<MaltFigures> MaltFiguresForm = new Form<MaltFigures>(new MaltFigures()) { About = "What a certificate says of a malt.", SchemaName = "maltFigures" }
        .May("extract", "extract, dry", Leaves.Of<Fraction>(), f => f.Extract, (f, v) => f with { Extract = v }, new("Fine grind, on dry matter, 50 % to 95 %."))
        .May("extractAsIs", "extract, as is", Leaves.Of<Fraction>(), f => f.ExtractAsIs, (f, v) => f with { ExtractAsIs = v }, new("Fine grind, of the malt as it is; it goes with its moisture, and not with an extract on dry matter."))
        .May("moisture", "moisture", Leaves.Of<Fraction>(), f => f.Moisture, (f, v) => f with { Moisture = v }, new("Water in it, by mass."))
        .May("colour", "colour", Leaves.Of<MaltColour>(), f => f.Colour, (f, v) => f with { Colour = v })
        .May("diastaticPower", "diastatic power", Spelled.DiastaticPower, f => f.DiastaticPower, (f, v) => f with { DiastaticPower = v }, new("How much starch its enzymes can take apart, in Lintner or Windisch-Kolbach: \"60 Lintner\", \"194 WK\"; at most 500 Lintner."))
        .May("acidity", "acidity", TitrationForm.Whole, f => f.Acidity, (f, v) => f with { Acidity = v }, new("Measured on a mash of the malt alone in distilled water."))
        .Agree(Check);

    private static readonly Form<HopFigures> HopFiguresForm = new Form<HopFigures>(new HopFigures()) { About = "What a pack or an assay says of a hop.", SchemaName = "hopFigures" }
        .May("alpha", "alpha", Leaves.Of<Fraction>(), f => f.Alpha, (f, v) => f with { Alpha = v }, new("Alpha acids by mass."))
        .May("beta", "beta", Leaves.Of<Fraction>(), f => f.Beta, (f, v) => f with { Beta = v }, new("Beta acids by mass; kept, and not reckoned with yet."))
        .May("lost", "lost in six months", Leaves.Of<Fraction>(), f => f.Lost, (f, v) => f with { Lost = v }, new("Share of its alpha acids it loses in six months at 20 °C in the open."))
        .May("form", "form", Leaves.Word(FileWords.HopForms), f => f.Form, (f, v) => f with { Form = v })
        .May("harvested", "harvested", Leaves.Day, f => f.Harvested, (f, v) => f with { Harvested = v }, new("Kept; a hop's age counts only where a recipe's line says one."))
        .Agree(Check);

    private const int MostGenerations = 100;

    private static readonly Form<YeastHarvest> YeastHarvestForm = new Form<YeastHarvest>(new YeastHarvest { Day = default }) { About = "Where a lot of yeast comes from that was taken out of a fermenter.", SchemaName = "yeastHarvest" }
        .Need("day", "harvested", Leaves.Day, h => h.Day, (h, v) => h with { Day = v }, new("Its age counts from this day, unless a recipe's line says one."))
        .May("from", "from the gyle", Leaves.Name, h => h.From, (h, v) => h with { From = v })
        .May("generation", "generation", Leaves.Number(1, MostGenerations), h => h.Generation, (h, v) => h with { Generation = v }, new("How many beers it has fermented: 1 after the first."))
        .May("mayContain", "may contain", Leaves.Prose, h => h.MayContain, (h, v) => h with { MayContain = v }, new("Allergens of the beer it comes from. A beer it is pitched into says so too."))
        .Agree((harvest, at) =>
        {
            if (harvest.Generation is { } generation && generation % 1 != 0)
            {
                at.Error("yeast.generation", "generation", Invariant($"{generation}; must be a whole number from 1 to {MostGenerations}"), Invariant($"{generation}"), Invariant($"1 to {MostGenerations}"));
            }
        });

    private static readonly Form<YeastFigures> YeastFiguresForm = YeastForm("What is known of a yeast.", "yeastFigures");

    private static readonly Form<YeastFigures> YeastAssayForm = YeastForm("What is known of a lot of yeast.", "yeastAssay")
        .May("harvest", "taken out of a fermenter", YeastHarvestForm, f => f.Harvest, (f, v) => f with { Harvest = v }, new("Of yeast that was pitched before; left out for any that was bought."));

    private static readonly Form<ShelfFigures> ShelfFiguresForm = new Form<ShelfFigures>(new ShelfFigures()) { About = "What is known of anything else.", SchemaName = "shelfFigures" }
        .May("colour", "colour", Leaves.Of<MaltColour>(), f => f.Colour, (f, v) => f with { Colour = v }, new("Of an extract or a sugar."));

    /// <summary>A malt.</summary>
    public static readonly FileForm<MaltSheet> Malt = new(
        LarderFile.MaltFormat,
        "A Gylebook malt",
        new Form<MaltSheet>(new MaltSheet { Id = "", Name = "", Like = "" }) { About = "A malt of one's own, with its lots." }
            .Titled().Alike(MaltFiguresForm, "The malt of the tables").WithLots(MaltFiguresForm, AmountForm.Weighed)
            .Agree((sheet, at) => Known(Malts.Find(sheet.Like), "malt", sheet.Like, at)));

    /// <summary>A hop.</summary>
    public static readonly FileForm<HopSheet> Hop = new(
        LarderFile.HopFormat,
        "A Gylebook hop",
        new Form<HopSheet>(new HopSheet { Id = "", Name = "", Like = "" }) { About = "A hop of one's own, with its lots." }
            .Titled().Alike(HopFiguresForm, "The cultivar of the tables").WithLots(HopFiguresForm, AmountForm.Weighed)
            .Agree((sheet, at) => Known(HopCultivars.Find(sheet.Like), "hop", sheet.Like, at))
            .Agree(Picked));

    /// <summary>A yeast.</summary>
    public static readonly FileForm<YeastSheet> Yeast = new(
        LarderFile.YeastFormat,
        "A Gylebook yeast",
        new Form<YeastSheet>(new YeastSheet { Id = "", Name = "", Like = "" }) { About = "A yeast of one's own, with its lots." }
            .Titled().Alike(YeastFiguresForm, "The style-type of the tables").WithLots(YeastAssayForm, AmountForm.WeighedOrPoured)
            .Agree((sheet, at) => Known(YeastStyles.Find(sheet.Like), "yeast", sheet.Like, at)));

    /// <summary>Anything else.</summary>
    public static readonly FileForm<ShelfSheet> Shelf = new(
        LarderFile.ShelfFormat,
        "A Gylebook shelf sheet",
        new Form<ShelfSheet>(new ShelfSheet { Id = "", Name = "", Like = "", Kind = Unsaid }) { About = "Anything else at hand, with its lots." }
            .Titled()
            .Need("kind", "kind", Leaves.Word(ShelfKinds), s => s.Kind, (s, v) => s with { Kind = v }, new("Under which key a recipe's line names it."))
            .Alike(ShelfFiguresForm, "What of the tables").WithLots(ShelfFiguresForm, AmountForm.WeighedOrPoured)
            .Agree(Check));

    /// <summary>Stands for the kind of a sheet that does not say it; no such sheet leaves the reader.</summary>
    private const IngredientKind Unsaid = (IngredientKind)(-1);

    private static Form<YeastFigures> YeastForm(string about, string schema) => new Form<YeastFigures>(new YeastFigures()) { About = about, SchemaName = schema }
        .May("form", "form", Leaves.Word(FileWords.YeastForms), f => f.Form, (f, v) => f with { Form = v })
        .May("cells", "cells when fresh", Spelled.Cells, f => f.Cells, (f, v) => f with { Cells = v }, new("How many are in the amount beside it."))
        .May("per", "in", AmountForm.WeighedOrPoured, f => f.Per, (f, v) => f with { Per = v }, new("What holds those cells: \"1 g\", or a pack's \"11.5 g\"."))
        .May("attenuation", "attenuation", Leaves.Of<Fraction>(), f => f.Attenuation, (f, v) => f with { Attenuation = v }, new("Apparent attenuation it reached last time, 5 % to 100 %."))
        .Agree(Check);

    private static void Check(MaltFigures malt, PartCursor at)
    {
        string limit = Invariant($"{LeastExtractPercent} % to {MostExtractPercent} %");
        if (malt is { Extract: { } extract } && extract.Value.Percent is < LeastExtractPercent or > MostExtractPercent)
        {
            at.Error("malt.extract", "extract", $"{extract}; must be {limit} of dry matter: husk and protein never dissolve", extract.Text, limit);
        }

        if (malt is not { ExtractAsIs: { } asIs })
        {
            return;
        }

        if (malt.Extract is not null)
        {
            at.Error("malt.extractTwice", "extractAsIs", "the extract is there on dry matter too; keep one of the two", asIs.Text);
        }
        else if (malt.Moisture is not { } moisture)
        {
            at.Error("malt.moistureUnsaid", "extractAsIs", $"{asIs}; as is goes with a moisture: without it nobody knows of how much dry matter that is", asIs.Text, "a moisture");
        }
        else if (malt.ExtractDry?.Percent is not (>= LeastExtractPercent and <= MostExtractPercent))
        {
            string dry = malt.ExtractDry is { } counted ? Invariant($"{counted.Percent:0.#} % of dry matter") : "more than there is";
            at.Error("malt.extract", "extractAsIs", $"{asIs} with {moisture} of moisture is {dry}; must be {limit}", asIs.Text, limit);
        }
    }

    private static void Check(HopFigures hop, PartCursor at)
    {
        if (hop.Alpha is { } alpha && alpha.Value.Percent is 0 or > AdditionCheck.MostAlphaPercent)
        {
            at.Error("hop.alpha", "alpha", Invariant($"{alpha}; must be above 0 % and at most {AdditionCheck.MostAlphaPercent} %: no hop cone or pellet has more alpha acids"), alpha.Text, Invariant($"{AdditionCheck.MostAlphaPercent} %"));
        }

        if (hop.Lost is { } lost && lost.Value.Percent > AgeCheck.MostLostPercent)
        {
            at.Error("hop.lost", "lost", Invariant($"{lost}; must be at most {AgeCheck.MostLostPercent} %: nothing would be left to age"), lost.Text, Invariant($"{AgeCheck.MostLostPercent} %"));
        }
    }

    private static void Check(YeastFigures yeast, PartCursor at)
    {
        if (yeast.Cells is null != yeast.Per is null)
        {
            at.Error("yeast.cellsHalf", yeast.Cells is null ? "per" : "cells", "cells and per go together: so many cells in so much yeast", (yeast.Cells?.Text ?? yeast.Per?.Text)!, "both");
        }
        else if (yeast.Per is { IsNothing: true } per)
        {
            at.Error("yeast.cellsHalf", "per", $"{per.Text}; must be above 0: nothing holds no cells", per.Text, "above 0");
        }

        if (yeast.Attenuation is { } told && told.Value.Percent is < AdditionCheck.LeastAttenuationPercent or > AdditionCheck.MostAttenuationPercent)
        {
            string limit = Invariant($"{AdditionCheck.LeastAttenuationPercent} % to {AdditionCheck.MostAttenuationPercent} %");
            at.Error("yeast.attenuation", "attenuation", $"{told}; must be {limit}, apparent", told.Text, limit);
        }
    }

    private static void Check(ShelfSheet sheet, PartCursor at)
    {
        switch (sheet.Kind)
        {
            case IngredientKind.Sugar or IngredientKind.Extract:
                Known(Sugars.Find(sheet.Like), FileWords.Kinds.Word(sheet.Kind), sheet.Like, at);
                break;
            case IngredientKind.Spice:
                Known(FoodTable.Find(sheet.Like), "food", sheet.Like, at);
                break;
            case IngredientKind.Fining:
                Named(Finings.All.Any(row => row.Id == sheet.Like || string.Equals(row.Name, sheet.Like, StringComparison.OrdinalIgnoreCase)), "fining", string.Join(", ", Finings.All.Select(row => row.Name)), sheet.Like, at);
                break;
            case IngredientKind.Salt:
                Named(ShelfWords.Salt(sheet.Like) is not null, "salt", ShelfWords.KnownSalts, sheet.Like, at);
                break;
            case IngredientKind.Acid:
                Named(ShelfWords.Acid(sheet.Like) is not null, "acid", ShelfWords.KnownAcids, sheet.Like, at);
                break;
            default:
                break;
        }

        bool hasColour = sheet.Figures?.Colour is not null || sheet.Lots.Any(lot => lot.Assay?.Colour is not null);
        if (hasColour && sheet.Kind is not (Unsaid or IngredientKind.Sugar or IngredientKind.Extract))
        {
            at.Error("shelf.colour", "figures", $"only extracts and sugars have a colour; this is {FileWords.Kinds.Word(sheet.Kind)}", "colour");
        }
    }

    /// <summary>Whether each lot was harvested before it was bought.</summary>
    private static void Picked(HopSheet sheet, PartCursor at)
    {
        for (int i = 0; i < sheet.Lots.Count; i++)
        {
            if (sheet.Lots[i] is { Bought: { } bought, Assay.Harvested: { } harvested } && bought < harvested)
            {
                string day = LotForms.Day(harvested), got = LotForms.Day(bought);
                at.Findings.Error("lot.dates", Invariant($"lots[{i}].assay.harvested"), $"{day}; must not be after it was bought, {got}", day, got);
            }
        }
    }

    private static void Known<T>(Found<T> found, string kind, string like, PartCursor at)
        where T : class => Named(found.Match is not null, kind, string.Join(", ", found.Nearest), like, at);

    private static void Named(bool isKnown, string kind, string nearest, string like, PartCursor at)
    {
        // What could not be read has been told.
        if (!isKnown && like.Length > 0)
        {
            at.Error($"{kind}.unknown", "like", $"\"{FindingList.Shorten(like)}\"; not in the tables. Nearest: {nearest}", like, nearest);
        }
    }
}
