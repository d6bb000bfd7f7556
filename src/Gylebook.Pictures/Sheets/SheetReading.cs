using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Recipes;
using Gylebook.Science.Conditioning;

namespace Gylebook.Pictures.Sheets;

/// <summary>Reads a plan and its forecast as a sheet.</summary>
internal sealed class SheetReading(BrewForecast forecast, BrewPlan brew, Shown shown)
{
    private readonly SheetRows _rows = new(forecast, brew, shown);

    /// <summary>The places that a sheet tells apart, in order.</summary>
    internal enum Spot
    {
        Water,
        Mash,
        Sour,
        Boil,
        Ferment,
        Package,
    }

    public RecipeSheet Sheet() => new()
    {
        Name = brew.Recipe.Name,
        Kit = brew.Kit.Name,
        Notes = brew.Recipe.Notes?.Trim() ?? "",
        Figures = [.. Figures().OfType<SheetFigure>()],
        Parts = Parts(),
        Allergens = AllergensOf(forecast.Allergens),
        Marks = [.. forecast.Cautions.Where(caution => !caution.IsGrave).OrderBy(caution => caution.Severity == Severity.Note).Select(caution => caution.Kind.Mark).Distinct()],
        Run = forecast.Stages.Count > 0 ? Bare(RunPicture.Of(forecast, shown.Units)) : null,
        Findings = forecast.Findings,
        Failure = forecast.Failure,
    };

    /// <summary>Where a stage is told.</summary>
    internal static Spot SpotOf(Stage stage) => stage switch
    {
        Stage.Strike => Spot.Water,
        < Stage.TopUp => Spot.Mash,
        Stage.Sour => Spot.Sour,
        < Stage.Cast => Spot.Boil,
        < Stage.Rack => Spot.Ferment,
        _ => Spot.Package,
    };

    /// <summary>Liquor and losses alone: all else that goes in, and every caution, stands on the sheet in words.</summary>
    private static RunPicture Bare(RunPicture picture)
    {
        static IReadOnlyList<RunStep> Steps(IReadOnlyList<RunStep> steps) =>
            [.. steps.Select(step => step with { Additions = [.. step.Additions.Where(addition => addition.IsLiquor)], Cautions = [] })];
        return picture with
        {
            Trunk = Steps(picture.Trunk),
            Branches = [.. picture.Branches.Select(branch => branch with { Steps = Steps(branch.Steps) })],
        };
    }

    private IEnumerable<SheetFigure?> Figures() =>
    [
        Figure("packagedLitres", "Beer", shown.Litres),
        Figure("alcoholByVolume", "Alcohol", shown.Percent),
        Figure("originalGravity", "Original gravity, all in", shown.Gravity),
        Figure("finalGravity", "Final gravity", shown.Gravity),
        Figure("bitterness", "Bitterness", shown.Ibu),
        Figure("colourSrm", "Colour", shown.Srm),
    ];

    private SheetFigure? Figure(string name, string title, Func<double, string> words) => Band(name) is not { } band
        ? null
        : new SheetFigure(title, words(band.Likely), EndsOf(band, words));

    private static string EndsOf(Band band, Func<double, string> words) => band.Kind == BandKind.Point ? "" : $"{words(band.Low)} to {words(band.High)}";

    private Band? Band(string name) => forecast.Headline.FirstOrDefault(headline => headline.Name == name)?.Band;

    private static IReadOnlyList<string> AllergensOf(AllergenOutlook allergens) => allergens.StatementEu == allergens.StatementUs
        ? [allergens.StatementEu]
        : [$"{allergens.StatementEu} (EU)", $"{allergens.StatementUs} (US)"];

    private IReadOnlyList<SheetPart> Parts() =>
    [
        .. Enum.GetValues<Spot>()
            .Select(spot => new SheetPart(NameOf(spot), Joined(AsideOf(spot)), _rows.At(spot), CautionsAt(spot)))
            .Where(part => part.Aside.Length > 0 || part.Rows.Count > 0 || part.Cautions.Count > 0),
    ];

    private SheetCaution[] CautionsAt(Spot spot) =>
    [
        .. forecast.Cautions.Where(caution => caution.IsGrave && SpotOf(caution.Place.Stage) == spot)
            .DistinctBy(caution => caution.Message).Select(caution => new SheetCaution(Words.Sentence(caution.Kind.Mark), ToldText.Of(caution.Message, shown.Units))),
    ];

    private string NameOf(Spot spot) => spot == Spot.Boil && brew.Recipe.Boil is null ? "Kettle" : spot.ToString();

    private IEnumerable<string?> AsideOf(Spot spot) => spot switch
    {
        Spot.Water => [forecast.Water?.Name],
        Spot.Mash => [RestsOf(brew.Recipe.Mash is { Method: not MashMethod.None } mash ? mash.Rests : []), MashPh()],
        Spot.Boil =>
        [
            brew.Recipe.Boil?.Time.Text,
            brew.Recipe.Stand is { } stand ? $"stand {RestsOf([stand])}" : null,
            forecast.Chilling is { } chilling ? $"chill to {shown.Celsius(chilling.ToCelsius)}" : null,
        ],
        Spot.Ferment => [.. PortionsOf(), RestsOf(brew.Recipe.Ferment), CellsWanted()],
        Spot.Package => PackageOf(),
        _ => [],
    };

    private string RestsOf(IReadOnlyList<Rest> rests) =>
        string.Join(", then ", rests.Select(rest => $"{shown.Celsius(rest.Temperature.Value.Celsius)} for {rest.Time.Text}"));

    private string? MashPh() => Band("mashPh") is not { } ph ? null
        : ph.Kind == BandKind.Point ? $"pH {Ph(ph.Likely)}" : $"pH {Ph(ph.Likely)} ({EndsOf(ph, Ph)})";

    private string Ph(double ph) => shown.Number(ph, 2);

    private IEnumerable<string> PortionsOf() => brew.Recipe.Portions.Select(portion => $"{portion.Name} {portion.Share.Text}");

    private string? CellsWanted() => forecast.Pitch is { } pitch ? $"{shown.Number(pitch.CellsNeededBillions, 0)} billion cells wanted" : null;

    private IEnumerable<string?> PackageOf() => forecast.Package is not { } package ? [brew.Recipe.Package.In] :
    [
        package.Count is int count ? Invariant($"{count} × {package.In}") : package.In,
        shown.Volumes(package.Co2Volumes),
        package.Keg is { } keg
            ? $"{shown.Number(keg.GaugeBar, 2)}{Shown.Space}bar ({shown.Number(keg.GaugeBar / KegPressure.BarPerPsi, 1)}{Shown.Space}psi) on the gauge at {shown.Celsius(keg.Celsius)}"
            : null,
    ];

    private static string Joined(IEnumerable<string?> parts) => string.Join(" · ", parts.Where(part => !string.IsNullOrEmpty(part)));
}
