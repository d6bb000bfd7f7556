using Gylebook.Recipes.Checks;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Things;

/// <summary>A culture from elsewhere: a style-type of the tables, by its name or by what the file says it is.</summary>
internal sealed class LandedYeasts(Landing landing)
{
    private const double MostBillions = 100_000;

    /// <summary>The style-type a line names; null when it is no yeast, and stays behind.</summary>
    public string? Line(OpenCulture theirs, string name)
    {
        LandedAmounts.Leave(landing.Travels, theirs.Path, ("product_id", theirs.ProductId), ("notes", theirs.Notes));
        return Like(theirs, name)?.Name;
    }

    /// <summary>A sheet of it; nothing when it is no yeast.</summary>
    public void Sheet(OpenCulture theirs, string name, string? id = null)
    {
        if (Like(theirs, name) is not { } like)
        {
            return;
        }

        landing.Take(
            new YeastSheet
            {
                Id = id ?? SheetNames.Free(OpenNames.Id(name, "yeast")),
                Name = id is null ? SheetNames.Beside(name, YeastStyles.Find(name).Match is not null) : name,
                Like = like.Name,
                Notes = theirs.Notes,
                Figures = new YeastFigures { Form = Form(theirs), Attenuation = Attenuation(theirs) },
            },
            theirs.Path);
    }

    /// <summary>Dry, liquid or slurry.</summary>
    public IngredientForm? Form(OpenCulture theirs)
    {
        switch (theirs.Form)
        {
            case CultureForm.Dry:
                return IngredientForm.Dry;
            case CultureForm.Liquid:
                return IngredientForm.Liquid;
            case CultureForm.Culture:
                return IngredientForm.Slurry;
            case CultureForm.Slant:
                landing.Travels.Convert($"{theirs.Path}.form", "a slant counts as liquid yeast: it is grown first");
                return IngredientForm.Liquid;
            case CultureForm.Dregs:
                landing.Travels.Convert($"{theirs.Path}.form", "dregs count as slurry");
                return IngredientForm.Slurry;
            default:
                return null;
        }
    }

    /// <summary>The attenuation it is expected to reach, or the middle of a range of it.</summary>
    public Entered<Fraction>? Attenuation(OpenCulture theirs)
    {
        Entered<Fraction>? stated = theirs.Attenuation;
        if (stated is null && theirs.AttenuationRange is { Low: { } low, High: { } high })
        {
            double middle = (low.Value.Percent + high.Value.Percent) / 2;
            stated = new(Fraction.FromPercent(middle), Invariant($"{middle:0.##} %"));
            landing.Travels.Convert($"{theirs.Path}.attenuation_range", $"{low} to {high}; the middle, {stated}, is kept");
        }

        if (stated is not { } told || told.Value.Percent is >= AdditionCheck.LeastAttenuationPercent and <= AdditionCheck.MostAttenuationPercent)
        {
            return stated;
        }

        landing.Travels.Leave($"{theirs.Path}.attenuation", Invariant($"{told}; must be {AdditionCheck.LeastAttenuationPercent} % to {AdditionCheck.MostAttenuationPercent} %, apparent"));
        return null;
    }

    /// <summary>Cells it held when fresh.</summary>
    public CellCount? Cells(OpenCulture theirs)
    {
        if (theirs.CellsBillions is not { } billions)
        {
            return null;
        }

        if (billions is >= 0 and <= MostBillions)
        {
            return new CellCount(billions, $"{Tables.OpenUnits.Digits(billions)} billion");
        }

        landing.Travels.Leave($"{theirs.Path}.cell_count_billions", Invariant($"{billions} billion; must be from 0 to {MostBillions:0}"));
        return null;
    }

    private YeastStyle? Like(OpenCulture theirs, string name)
    {
        if (YeastStyles.Find(name).Match is { } known)
        {
            return known;
        }

        string? id = theirs.Type switch
        {
            CultureType.Ale or CultureType.Wine or CultureType.Champagne or null => "american-ale",
            CultureType.Lager => "lager",
            CultureType.Kveik => "kveik",
            CultureType.Brett => "brettanomyces",
            CultureType.Wheat => "weissbier",
            _ => null,
        };
        if (id is null)
        {
            landing.Travels.Leave($"{theirs.Path}", $"{name}: a culture of type {theirs.Type.ToString()!.ToLowerInvariant()} is no yeast that the tables have; sour wort in the kettle, under `souring`");
            return null;
        }

        YeastStyle like = YeastStyles.Find(id).Match!;
        landing.Travels.Default($"{theirs.Path}.name", $"\"{name}\" is taken to be like {like.Name}: the tables know style-types, no makers' strains");
        return like;
    }
}
