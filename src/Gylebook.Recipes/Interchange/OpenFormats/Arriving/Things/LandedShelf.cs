using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Things;

/// <summary>Sugars, extracts, finings, salts and acids from elsewhere, by what the tables call them.</summary>
internal sealed class LandedShelf(Landing landing)
{
    /// <summary>A colour, EBC, from which an extract counts as amber, and as dark. Common practice, no source.</summary>
    private const double AmberEbc = 12, DarkEbc = 35;

    private static readonly (string Word, string Id)[] SugarWords =
    [
        ("lactose", "lactose-monohydrate"), ("milk", "lactose-monohydrate"), ("maltodextrin", "maltodextrin"), ("dextrose", "dextrose-monohydrate"),
        ("corn sugar", "dextrose-monohydrate"), ("glucose", "dextrose-monohydrate"), ("invert", "invert-syrup"), ("fructose", "fructose"),
        ("corn syrup", "glucose-syrup-42"), ("brown", "brown-sugar"),
    ];

    /// <summary>The sugar of the tables that a name means.</summary>
    public string Sugar(OpenFermentable theirs, string name)
    {
        if (Sugars.Find(name).Match is { IsMaltExtract: false } known)
        {
            return Counted(theirs, known);
        }

        bool isCandi = name.Contains("candi", StringComparison.OrdinalIgnoreCase) || name.Contains("candy", StringComparison.OrdinalIgnoreCase);
        string id = isCandi ? name.Contains("syrup", StringComparison.OrdinalIgnoreCase) ? (theirs.Colour?.Value.Ebc ?? 0) > AmberEbc ? "candi-syrup-dark" : "candi-syrup-light" : "candi-sugar"
            : SugarWords.FirstOrDefault(row => name.Contains(row.Word, StringComparison.OrdinalIgnoreCase)).Id ?? "white-sugar";
        return Like(theirs, Sugars.Find(id).Match!, name);
    }

    /// <summary>The extract of the tables that a name, a type and a colour mean.</summary>
    public string Extract(OpenFermentable theirs, string name)
    {
        if (Sugars.Find(name).Match is { IsMaltExtract: true } known)
        {
            return Counted(theirs, known);
        }

        string shade = name.Contains("wheat", StringComparison.OrdinalIgnoreCase) ? "wheat" : (theirs.Colour?.Value.Ebc ?? 0) switch { >= DarkEbc => "dark", >= AmberEbc => "amber", _ => "light" };
        return Like(theirs, Sugars.Find($"{(theirs.Type == FermentableType.DryExtract ? "dry" : "liquid")}-malt-extract-{shade}").Match!, name);
    }

    /// <summary>A record of a sugar or an extract as a sheet.</summary>
    public void Sheet(OpenFermentable theirs, string name)
    {
        bool isSugar = theirs.Type == FermentableType.Sugar;
        string like = isSugar ? Sugar(theirs, name) : Extract(theirs, name);
        landing.Take(
            new ShelfSheet
            {
                Id = SheetNames.Free(OpenNames.Id(name, "sugar")),
                Name = SheetNames.Beside(name, Sugars.Find(name).Match is not null),
                Like = like,
                Kind = isSugar ? IngredientKind.Sugar : IngredientKind.Extract,
                Notes = theirs.Notes,
                Figures = theirs.Colour is { } colour ? new ShelfFigures { Colour = colour } : null,
                Lots = LandedAmounts.Lots<ShelfFigures>(theirs, mayBePoured: true, landing.Travels),
            },
            theirs.Path);
    }

    /// <summary>The kind of shelf that anything else stands on, with what the tables call it; null when it is a food.</summary>
    public (IngredientKind Kind, string Of)? Find(OpenMisc theirs, string name)
    {
        if (theirs.Type == MiscType.Fining || (theirs.Type is MiscType.Other or null && Finings.Find(name).Match is not null))
        {
            return (IngredientKind.Fining, Fining(theirs, name));
        }

        // A herb called "lime" is no slaked lime.
        if (theirs.Type is not (MiscType.WaterAgent or MiscType.Other or null))
        {
            return null;
        }

        if (ShelfWords.Salt(name) is { } salt)
        {
            return (IngredientKind.Salt, salt.Name);
        }

        if (ShelfWords.Sold(name) is { } sold)
        {
            return (IngredientKind.Acid, sold.Name);
        }

        return ShelfWords.Acid(name) is { } acid ? (IngredientKind.Acid, Strength(theirs, name, acid.Id)) : null;
    }

    /// <summary>A record of anything else on the shelf as a sheet; false when it is a food.</summary>
    public bool TrySheet(OpenMisc theirs, string name)
    {
        if (Find(theirs, name) is not { } found)
        {
            return false;
        }

        landing.Take(
            new ShelfSheet
            {
                Id = SheetNames.Free(OpenNames.Id(name, "shelf")),
                Name = SheetNames.Beside(name, TableNames.Of(found.Kind, name) is not null),
                Like = found.Of,
                Kind = found.Kind,
                Notes = theirs.Notes,
                Lots = LandedAmounts.Lots<ShelfFigures>(theirs, mayBePoured: true, landing.Travels),
            },
            theirs.Path);
        return true;
    }

    private string Fining(OpenMisc theirs, string name)
    {
        if (Finings.Find(name).Match is { } known)
        {
            return known.Name;
        }

        string like = Finings.Find(theirs.Timing?.Use is OpenUse.Fermentation or OpenUse.Rack or OpenUse.Package ? "gelatine" : "carrageenan").Match!.Name;
        landing.Travels.Default($"{theirs.Path}.name", $"\"{name}\" is taken to be like {like}: the tables know no such fining");
        return like;
    }

    private string Strength(OpenMisc theirs, string name, string acid)
    {
        string usual = AcidAsSold.Shelf.First(sold => sold.Acid.Id == acid).Name;
        landing.Travels.Default($"{theirs.Path}.name", $"\"{name}\" is taken for {usual}: the file says no strength that the tables have");
        return usual;
    }

    /// <summary>A row that the name itself means: what the file says otherwise of it stays behind.</summary>
    private string Counted(OpenFermentable theirs, Sugar row)
    {
        double share = 100 * (1 - row.Water);
        if (theirs.Yield is { } yield && Math.Abs(yield.Value.Percent - share) > 0.05)
        {
            landing.Travels.Leave($"{theirs.Path}.yield", Invariant($"{yield}; {row.Name} counts here with {share:0.#} % of extract"));
        }

        LandedAmounts.Leave(landing.Travels, theirs.Path, ("yield.potential", theirs.Yield is null ? theirs.Potential?.Text : null), ("moisture", theirs.Moisture?.Text));
        return row.Name;
    }

    private string Like(OpenFermentable theirs, Sugar row, string name)
    {
        landing.Travels.Default($"{theirs.Path}.name", $"\"{name}\" is taken to be like {row.Name}");
        return Counted(theirs, row);
    }
}
