using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Things;

/// <summary>A grain from elsewhere: a malt of the tables, or a sheet that says what of them it is like.</summary>
internal sealed class LandedMalts(Landing landing)
{
    /// <summary>A stated extract that is as near as this to the table's is the table's, % of dry matter. Our choice: what one lot differs theirs the next.</summary>
    private const double SameExtractPercent = 1.5;

    /// <summary>What a malt's colour, EBC, says of its kind where nothing else does. Common practice, no source.</summary>
    private const double LeastRoastEbc = 350, LeastCaramelEbc = 40;

    private static readonly (string[] Words, Func<Malt, bool> Fits)[] ByName =
    [
        (["caramel", "crystal", "cara"], malt => malt.Family == MaltFamily.Caramel),
        (["dextrin"], malt => malt.Family == MaltFamily.Dextrin),
        (["smoked", "smoke", "rauch"], malt => malt.Id == "smoked-malt"),
        (["flake", "torrified", "rolled"], malt => malt.Id.EndsWith("flakes", StringComparison.Ordinal)),
        (["raw", "unmalted"], malt => malt.Id.StartsWith("raw", StringComparison.Ordinal)),
        (["roast", "chocolate", "black", "patent"], malt => malt.Family == MaltFamily.Roast),
    ];

    private static readonly string[] Cereals = ["wheat", "rye", "oat", "maize", "corn", "rice", "spelt"];

    /// <summary>What a line of it names, and the colour that the line states.</summary>
    public (string Of, Entered<MaltColour>? Colour) Line(OpenFermentable theirs, string name)
    {
        Malt? row = Malts.Find(name).Match;
        Entered<Fraction>? extract = Extract(theirs);
        theirs = theirs with { Yield = extract, Potential = null };
        bool isTables = row is not null && (extract is null || Math.Abs(extract.Value.Value.Percent - row.ExtractFineDry.Percent) <= SameExtractPercent);
        if (isTables)
        {
            Same(theirs, row!, extract);
            return (name, IsColourOf(row!, theirs.Colour) ? null : theirs.Colour);
        }

        string called = row is null ? name : $"{name}, {extract}";
        return (Sheet(theirs with { Name = called }, called, row), null);
    }

    /// <summary>A sheet of it.</summary>
    /// <returns>The id under which it lies.</returns>
    public string Sheet(OpenFermentable theirs, string name, Malt? row = null, string? id = null)
    {
        Malt like = row ?? Malts.Find(name).Match ?? Like(theirs, name);
        landing.Travels.Default($"{theirs.Path}.name", $"\"{name}\" is taken to be like {like.Name} in all that the file does not say");
        return landing.Take(
            new MaltSheet
            {
                Id = id ?? OpenNames.Id(name, "malt"),
                Name = name,
                Like = like.Name,
                Notes = theirs.Notes,
                Figures = new MaltFigures { Extract = Extract(theirs), Moisture = theirs.Moisture, Colour = theirs.Colour, DiastaticPower = theirs.DiastaticPower },
                Lots = LandedAmounts.Lots<MaltFigures>(theirs, mayBePoured: false, landing.Travels),
            },
            theirs.Path);
    }

    /// <summary>A record of a malt as a sheet, under a name that hides no row of the tables.</summary>
    public void Record(OpenFermentable theirs, string name)
    {
        Malt? row = Malts.Find(name).Match;
        Sheet(theirs, SheetNames.Beside(name, row is not null), row, SheetNames.Free(OpenNames.Id(name, "malt")));
    }

    /// <summary>The extract a file states, where a malt can have it.</summary>
    private Entered<Fraction>? Extract(OpenFermentable theirs)
    {
        Entered<Fraction>? stated = theirs.Yield ?? OfPotential(theirs);
        if (stated is not { } extract || extract.Value.Percent is >= LarderForms.LeastExtractPercent and <= LarderForms.MostExtractPercent)
        {
            return stated;
        }

        landing.Travels.Leave($"{theirs.Path}.yield", Invariant($"{extract}; no malt has less than {LarderForms.LeastExtractPercent} % or more than {LarderForms.MostExtractPercent} % of dry matter"));
        return null;
    }

    private Entered<Fraction>? OfPotential(OpenFermentable theirs) => LandedAmounts.OfPotential(theirs, landing.Travels);

    private void Same(OpenFermentable theirs, Malt row, Entered<Fraction>? extract)
    {
        if (extract is { } stated && Math.Abs(stated.Value.Percent - row.ExtractFineDry.Percent) > 0.05)
        {
            landing.Travels.Leave($"{theirs.Path}.yield", Invariant($"{stated}; {row.Name} counts here with {row.ExtractFineDry.Percent:0.#} % of dry matter"));
        }

        LandedAmounts.Leave(landing.Travels, theirs.Path, ("moisture", theirs.Moisture?.Text), ("diastatic_power", theirs.DiastaticPower?.Text), ("notes", theirs.Notes));
    }

    private static bool IsColourOf(Malt row, Entered<MaltColour>? colour) => colour is null || Math.Abs(colour.Value.Value.Ebc - row.Colour.Ebc) < 0.01;

    /// <summary>The malt of the tables that is most like it: of its sort and cereal, the nearest in colour.</summary>
    private static Malt Like(OpenFermentable theirs, string name)
    {
        Func<Malt, bool> fits = Fits(theirs, name);
        string? cereal = Cereals.FirstOrDefault(word => name.Contains(word, StringComparison.OrdinalIgnoreCase));
        Malt[] candidates = [.. Malts.All.Where(fits)];
        Malt[] ofCereal = [.. candidates.Where(malt => cereal is not null && malt.Cereal.StartsWith(cereal == "corn" ? "maize" : cereal, StringComparison.OrdinalIgnoreCase))];
        double ebc = theirs.Colour?.Value.Ebc ?? 0;
        return (ofCereal.Length > 0 ? ofCereal : candidates).MinBy(malt => Math.Abs(malt.Colour.Ebc - ebc))!;
    }

    private static Func<Malt, bool> Fits(OpenFermentable theirs, string name) => theirs.Group switch
    {
        GrainGroup.Base => malt => malt.Family == MaltFamily.Base,
        GrainGroup.Caramel => malt => malt.Family == MaltFamily.Caramel,
        GrainGroup.Roasted => malt => malt.Family == MaltFamily.Roast,
        GrainGroup.Smoked => malt => malt.Id == "smoked-malt",
        GrainGroup.Flaked => malt => malt.Id.EndsWith("flakes", StringComparison.Ordinal),
        _ when ByName.FirstOrDefault(row => row.Words.Any(word => name.Contains(word, StringComparison.OrdinalIgnoreCase))) is { Fits: not null } named => named.Fits,
        GrainGroup.Adjunct => malt => malt.Family == MaltFamily.Raw,
        _ => (theirs.Colour?.Value.Ebc ?? 0) switch
        {
            >= LeastRoastEbc => malt => malt.Family == MaltFamily.Roast,
            >= LeastCaramelEbc => malt => malt.Family == MaltFamily.Caramel,
            _ => malt => malt.Family == MaltFamily.Base,
        },
    };
}
