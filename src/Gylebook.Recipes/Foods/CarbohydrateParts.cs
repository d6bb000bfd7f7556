namespace Gylebook.Recipes.Foods;

/// <summary>All carbohydrate of a food, parted, g/100 g.</summary>
/// <param name="Sugars">Sugars by kind.</param>
/// <param name="Polyols">Sugar alcohols.</param>
/// <param name="Fibre">Dietary fibre.</param>
/// <param name="Starch">Starch.</param>
/// <param name="Acid">Acids, as far as the others leave room for them.</param>
/// <param name="Other">What is none of these: oligosaccharides, dextrins, pectin, undeclared fibre.</param>
internal readonly record struct CarbohydrateParts(SugarKinds Sugars, double Polyols, double Fibre, double Starch, double Acid, double Other)
{
    /// <summary>A cut is worth a look from this on, g/100 g, when it is also more than a tenth of the figure: analyses differ by less.</summary>
    private const double WorthALook = 0.5;

    /// <summary>Parts the carbohydrate: what is stated first, then what the family usually has.</summary>
    /// <param name="food">What is known.</param>
    /// <param name="carbohydrate">All carbohydrate, fibre and sugar alcohols included.</param>
    /// <param name="acid">Acids that are counted on their own; tables count them as carbohydrate.</param>
    /// <param name="family">Whose habits to borrow.</param>
    /// <param name="notes">Takes down what was borrowed and found.</param>
    public static CarbohydrateParts Of(FoodComposition food, double carbohydrate, double acid, FoodFamily family, MakeupNotes notes)
    {
        var polyols = Math.Min(carbohydrate, food.Polyols ?? notes.Borrow("sugarAlcohols", 0, "g/100 g", family));
        var sugars = Sugar(food, carbohydrate, carbohydrate - polyols, family, notes);
        var room = Math.Max(0, carbohydrate - polyols - sugars.Total);
        var fibre = food.Fibre
            ?? notes.Borrow("fibre", Math.Min(room, carbohydrate * family.FibreOfCarbohydrate), "g/100 g", family);
        Fits("fibre", fibre, room, notes);
        fibre = Math.Min(fibre, room);
        acid = Math.Min(acid, room - fibre);
        var residue = room - fibre - acid;
        var starch = food.Starch ?? notes.Borrow("starch", residue * family.StarchShare, "g/100 g", family);
        Fits("starch", starch, residue, notes);
        starch = Math.Min(starch, residue);
        return new CarbohydrateParts(sugars, polyols, fibre, starch, acid, residue - starch);
    }

    private static SugarKinds Sugar(
        FoodComposition food, double carbohydrate, double room, FoodFamily family, MakeupNotes notes)
    {
        var named = SugarKinds.Named(food).Total;
        var total = food.Sugars
            ?? (named > 0 ? named : notes.Borrow("sugars", Math.Min(room, carbohydrate * family.SugarsOfCarbohydrate), "g/100 g", family));
        var kinds = SugarKinds.Split(food, total, family, out var borrowed);
        if (borrowed > 0)
        {
            notes.Borrow("kindsOfSugar", borrowed, "g/100 g by the family's shares", family);
        }
        Fits("sugars", kinds.Total, room, notes);
        return kinds.Total > room ? kinds * (room / kinds.Total) : kinds;
    }

    /// <summary>Carbohydrate is by difference and carries the error of every other figure; a part that passes it is cut to fit.</summary>
    private static void Fits(string what, double value, double room, MakeupNotes notes)
    {
        if (value > room + 1e-9)
        {
            var cut = value - room;
            var severity = cut > WorthALook && cut > 0.1 * value ? Severity.Warning : Severity.Note;
            notes.Find("food.carbohydrateOverfull", severity, "composition." + what,
                $"More {what} than the carbohydrate has room for; cut to fit.",
                MakeupNotes.Say(value) + " g/100 g", MakeupNotes.Say(room) + " g/100 g");
        }
    }
}
