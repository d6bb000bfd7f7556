using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Foods.Labels.Rounding;

namespace Gylebook.Recipes.Foods;

/// <summary>Reads a nutrition panel as a composition per 100 g: what its bounds allow, and a likely point inside them.</summary>
/// <remarks>
/// What: bounds by <see cref="LabelBounds"/>; the point takes each printed number as it stands, pulled inside bounds and mass
/// balance. For "0 g" and "less than 1 g" the family's figure, clipped, beats the middle (<see cref="LabelPrior"/>); where the
/// family is silent a zero is taken as zero and "less than" as its half.
/// Source: 21 CFR 101.9; Regulation (EU) No 1169/2011, annexes I and XIV (salt = 2.5 × sodium).
/// Valid for: a serving stated by mass. A panel per 100 mL needs the density, which it does not print.
/// Accuracy: the bounds are guaranteed for makers who round by the rules; the point claims none.
/// </remarks>
internal static class LabelReading
{
    /// <summary>The panel as a composition; a missing European fibre is borrowed from the family.</summary>
    public static FoodComposition Read(LabelPanel label, LabelBounds bounds, FoodFamily family, MakeupNotes notes)
    {
        LabelFindings.Report(label, bounds, notes);
        var factor = bounds.Contradictions.Any(found => found.Lines.Contains(LabelLine.Serving)) && label.ServingGrams <= 0 ? 0 : 100 / label.ServingGrams;
        var printed = label.AsPrinted();
        var wishes = Wishes(printed, factor, family, notes);
        var milligrams = printed.SodiumMilligrams.IsPrinted
            ? printed.SodiumMilligrams.Number
            : 1000 * printed.SaltGrams.Number / EuLabelRounding.SaltPerSodium;
        var composition = new FoodComposition
        {
            SodiumMilligrams = printed.SodiumMilligrams.IsPrinted || printed.SaltGrams.IsPrinted ? milligrams * factor : null,
            PotassiumMilligrams = printed.PotassiumMilligrams.IsPrinted ? printed.PotassiumMilligrams.Number * factor : null,
            EnergyKilocalories = label.EnergyKilocalories * factor,
            Source = "label",
        };
        return bounds.IsPossible
            ? Inside(composition, bounds.PointNear(wishes), printed, factor)
            : AsItStands(composition, wishes.ToDictionary(wish => wish.Line, wish => wish.Wish), label.Style);
    }

    /// <summary>A corner of the bounds as a composition, for the ends of what the food may do.</summary>
    public static FoodComposition Corner(FoodComposition likely, LabelPoint point, double sodiumMilligrams, double? potassiumMilligrams) => likely with
    {
        Protein = point.Protein,
        Fat = point.Fat,
        Carbohydrate = point.Carbohydrate,
        Fibre = point.Fibre,
        Sugars = point.Sugars,
        Polyols = likely.Polyols is null ? null : point.Polyols,
        Starch = likely.Starch is null ? null : Math.Min(likely.Starch.Value, point.StarchAndOther),
        SodiumMilligrams = sodiumMilligrams,
        PotassiumMilligrams = potassiumMilligrams,
    };

    private static FoodComposition Inside(FoodComposition rest, LabelPoint point, PrintedPanel printed, double factor) => rest with
    {
        Protein = printed.ProteinGrams.IsPrinted ? point.Protein : null,
        Fat = printed.FatGrams.IsPrinted ? point.Fat : null,
        Carbohydrate = printed.CarbohydrateGrams.IsPrinted ? point.Carbohydrate : null,
        Fibre = printed.FibreGrams.IsPrinted || printed.Style == PanelStyle.Eu ? point.Fibre : null,
        Sugars = printed.SugarsGrams.IsPrinted ? point.Sugars : null,
        Polyols = printed.PolyolsGrams.IsPrinted ? point.Polyols : null,
        Starch = printed.StarchGrams.IsPrinted ? Math.Min(printed.StarchGrams.Number * factor, point.StarchAndOther) : null,
    };

    /// <summary>An impossible panel is not mended: its figures go on as they stand, under a finding that says so.</summary>
    private static FoodComposition AsItStands(FoodComposition rest, Dictionary<LabelLine, double> wishes, PanelStyle style)
    {
        double? Of(LabelLine line) => wishes.TryGetValue(line, out var wish) ? wish : null;
        var fibre = Of(LabelLine.Fibre);
        return rest with
        {
            Protein = Of(LabelLine.Protein),
            Fat = Of(LabelLine.Fat),
            Carbohydrate = Of(LabelLine.Carbohydrate) + (style == PanelStyle.Eu ? fibre ?? 0 : 0),
            Fibre = fibre,
            Sugars = Of(LabelLine.Sugars),
            Polyols = Of(LabelLine.Polyols),
            Starch = Of(LabelLine.Starch),
        };
    }

    private static List<(LabelLine Line, double Wish)> Wishes(PrintedPanel printed, double factor, FoodFamily family, MakeupNotes notes)
    {
        List<(LabelLine, double)> wishes = [];
        LabelLine[] lines = [LabelLine.Protein, LabelLine.Fat, LabelLine.Carbohydrate, LabelLine.Sugars, LabelLine.Polyols, LabelLine.Fibre];
        foreach (var line in lines)
        {
            if (Wish(printed, line, factor, family, notes) is { } wish)
            {
                wishes.Add((line, wish));
            }
        }

        return wishes;
    }

    private static double? Wish(PrintedPanel printed, LabelLine line, double factor, FoodFamily family, MakeupNotes notes)
    {
        var value = printed[line];
        if (!value.IsPrinted && !(line == LabelLine.Fibre && printed.Style == PanelStyle.Eu && printed.CarbohydrateGrams.IsPrinted))
        {
            return null;
        }

        if (value is { Form: PrintedForm.Number, Number: > 0 })
        {
            return value.Number * factor;
        }

        return OfFamily(printed, line, factor, family) is { } figure
            ? notes.Borrow(value.IsPrinted ? $"{line}, within what the label allows" : "fibre", figure, "g/100 g", family)
            : value.Number * factor / (value.Form == PrintedForm.LessThan ? 2 : 1);
    }

    private static double? OfFamily(PrintedPanel printed, LabelLine line, double factor, FoodFamily family)
    {
        var carbohydrate = printed.CarbohydrateGrams.Number * factor;
        var whole = printed.Style == PanelStyle.Eu ? carbohydrate / Math.Max(0.01, 1 - family.FibreOfCarbohydrate) : carbohydrate;
        return line switch
        {
            LabelLine.Fibre => whole * family.FibreOfCarbohydrate,
            LabelLine.Sugars => whole * family.SugarsOfCarbohydrate,
            _ => null,
        };
    }
}
