using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Recipes.Ingredients;
using Spot = Gylebook.Pictures.Sheets.SheetReading.Spot;

namespace Gylebook.Pictures.Sheets;

/// <summary>Every single thing that goes in: the recipe's lines, the planned liquor, what the water plan weighs out, sugar and gas for the package.</summary>
internal sealed class SheetRows(BrewForecast forecast, BrewPlan brew, Shown shown)
{
    private readonly Dictionary<int, LinePart> _parts = LineParts.Of(brew).ToDictionary(part => part.Line);
    private readonly Dictionary<int, PlannedLine> _planned = brew.Lines.DistinctBy(line => line.Number).ToDictionary(line => line.Number);
    private readonly ILookup<int, double> _bitterness = forecast.BitternessBy.ToLookup(hop => hop.Line, hop => hop.Ibu);

    /// <summary>The rows of a place, in the order of the run.</summary>
    public IReadOnlyList<SheetRow> At(Spot spot) =>
    [
        .. spot == Spot.Water ? [.. Liquors(), .. DosesInLiquor()] : Array.Empty<SheetRow>(),
        .. spot == Spot.Sour ? Culture() : [],
        .. spot == Spot.Boil ? Doses(forecast.Water?.Kettle, "copper-up") : [],
        .. Lines(spot),
        .. spot == Spot.Package ? [.. Doses(forecast.Water?.Package, ""), .. PutInThePackage()] : Array.Empty<SheetRow>(),
    ];

    /// <summary>The recipe's own lines, those that no table knows too; what the water plan adds to them is told as it is sold, with its doses.</summary>
    private IEnumerable<SheetRow> Lines(Spot spot) => brew.Recipe.Ingredients.Take(brew.OwnLines)
        .Select((line, number) => _planned.GetValueOrDefault(number) ?? new PlannedLine(number, line, line.As ?? line.Of, line.Amount.Mass?.Value.Kilograms ?? 0))
        .Where(line => !line.Line.Amount.IsNothing && SheetReading.SpotOf(line.Line.At.ToPlace().Stage) == spot)
        .OrderBy(line => line.Line.At.ToPlace())
        .Select(line => new SheetRow(WhatOf(line), WhenOf(line.Line.At), AmountOf(line), BringsOf(line)));

    private string WhatOf(PlannedLine line) => string.Join(", ", new[]
    {
        Words.Sentence(line.Name),
        line.Line.Kind == IngredientKind.Malt && line.Line.Colour is { } colour ? shown.Malt(colour.Value) : null,
        line.Line.Form is { } form ? form.ToString().ToLowerInvariant() : null,
        AlphaOf(line) is var alpha and > 0 ? $"{shown.Percent(100 * alpha)} alpha" : null,
        line.Line.Lot is { Length: > 0 } lot ? $"lot {lot}" : null,
        line.Line.Portion is { Length: > 0 } portion ? $"into {portion}" : null,
    }.OfType<string>());

    private static double AlphaOf(PlannedLine line) => line.Line.Kind == IngredientKind.Hop ? line.Line.Alpha?.Value.Ratio ?? line.Alpha : 0;

    /// <summary>Where the heading says it already, once is enough.</summary>
    private static string WhenOf(AdditionTime at) => at.Point is AdditionPoint.Mash or AdditionPoint.Package ? "" : Words.Of(at);

    /// <summary>The weight; and first what a jug reads, where the brewer measures in a jug.</summary>
    private string AmountOf(PlannedLine line) => line.Line.Kind switch
    {
        IngredientKind.Salt => Grams(line.Kilograms * 1000),
        _ when line.Line.Amount.Volume is { } jug => line.Kilograms > 0 ? $"{shown.Litres(jug.Value.Litres)}, {shown.Kilograms(line.Kilograms)}" : shown.Litres(jug.Value.Litres),
        _ => shown.Kilograms(line.Kilograms),
    };

    private string BringsOf(PlannedLine line) =>
        _bitterness.Contains(line.Number) ? shown.Ibu(_bitterness[line.Number].Sum())
        : _parts.GetValueOrDefault(line.Number)?.GristPercent is { } percent ? $"{shown.Number(percent, 0)}{Shown.Space}%"
        : "";

    private IEnumerable<SheetRow> Liquors() => forecast.Additions
        .Where(row => row.Place.Stage is Stage.Strike or Stage.Rinse or Stage.TopUp)
        .Select(row => new SheetRow(Words.Sentence(row.What), WarmthOf(row.Place.Stage), shown.Litres(row.LitresAt20C), ""));

    private string WarmthOf(Stage stage) => (stage switch
    {
        Stage.Strike => forecast.MashSchedule?.StrikeCelsius,
        Stage.Rinse => forecast.MashSchedule?.Rinse?.Celsius,
        _ => null,
    }) is { } celsius && double.IsFinite(celsius) ? shown.Celsius(celsius) : "";

    private IEnumerable<SheetRow> DosesInLiquor()
    {
        if (forecast.Water is not { } water)
        {
            return [];
        }

        return
        [
            .. Doses(water.Mash, "mash"),
            .. water.Mend is { } mend ? [new SheetRow(mend.Acid?.Name ?? mend.Salt!.Name, "mash, as measured", Measured(mend.Units, mend.Acid?.Acid.UnitSymbol ?? "g"), "")] : Array.Empty<SheetRow>(),
            .. Doses(water.Sparge, "sparge"),
        ];
    }

    private IEnumerable<SheetRow> Doses(TreatedLiquor? liquor, string when) => liquor is null ? [] :
    [
        .. liquor.ShareDistilled > 0 && liquor.Litres > 0 ? [new SheetRow("Of it distilled water", when, shown.Litres(liquor.ShareDistilled * liquor.Litres), "")] : Array.Empty<SheetRow>(),
        .. liquor.Salts.Select(dose => new SheetRow(Words.Sentence(dose.Salt.Name), when, Grams(dose.Grams), "")),
        .. liquor.Acids.Select(dose => new SheetRow(Words.Sentence(dose.Acid.Name), when, Measured(dose.Units, dose.Acid.Acid.UnitSymbol), "")),
    ];

    private IEnumerable<SheetRow> Culture() => brew.Recipe.Souring is not { } souring ? [] :
        [new SheetRow(Words.Sentence(souring.Culture), $"{shown.Celsius(souring.Temperature.Value.Celsius)}, to pH {shown.Number(souring.Ph.Value, 2)}, {souring.Time.Text}", "", "")];

    /// <summary>What the plan itself puts in: sugar to prime with, gas from a cylinder.</summary>
    private IEnumerable<SheetRow> PutInThePackage() =>
    [
        .. forecast.Package is { PrimingSugarGrams: > 0 } package ? [new SheetRow("White sugar to prime", "", shown.Kilograms(package.PrimingSugarGrams / 1000), "")] : Array.Empty<SheetRow>(),
        .. forecast.Additions.Where(row => row.Place.Stage == Stage.Condition).GroupBy(row => row.What)
            .Select(gas => new SheetRow(Words.Sentence(gas.Key), "", shown.Kilograms(gas.Sum(row => row.Kilograms)), "")),
    ];

    /// <summary>Salts go by the gram and acids by the millilitre in any units, as the water's page has them: no scale reads a twentieth of an ounce.</summary>
    private string Grams(double grams) => Measured(grams, "g");

    private string Measured(double amount, string unit) => $"{shown.Number(amount, 1)}{Shown.Space}{unit}";
}
