using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Liquors;
using Gylebook.Science.Water;
using Gylebook.Web.Features.Liquors.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Liquors;

/// <summary>The ions of a plan, place by place.</summary>
public sealed partial class IonLedger
{
    /// <summary>The plan.</summary>
    [Parameter]
    [EditorRequired]
    public required LiquorDesk Desk { get; set; }

    /// <summary>What comes of it.</summary>
    [Parameter]
    [EditorRequired]
    public required LiquorOutlook Outlook { get; set; }

    private IReadOnlyList<Column> _columns = [];

    /// <inheritdoc/>
    protected override void OnParametersSet() => _columns = [.. Columns];

    private sealed record Column(string Title, Func<Ion, double?> At, double? Residual);

    private IEnumerable<Column> Columns
    {
        get
        {
            yield return new("Source", ion => Outlook.Source.Ions[ion], ResidualAlkalinity.AsCalciumCarbonate(Outlook.Source.Ions));
            if (Outlook.Outcome is not { } outcome)
            {
                yield break;
            }

            if (Outlook.Plan.Targets.Count > 0)
            {
                yield return new("Wanted", Wanted, null);
            }

            yield return new("Mash", ion => outcome.Mash.Ions[ion], ResidualAlkalinity.AsCalciumCarbonate(outcome.Mash.Ions));
            if (outcome.Sparge.Litres > 0)
            {
                yield return Of("Sparge", outcome.Sparge);
            }

            if (outcome.Sparge.Litres > 0 || outcome.Kettle.Salts.Count > 0)
            {
                yield return Of("Kettle", outcome.Kettle);
            }

            if (outcome.Package.Salts.Count > 0)
            {
                yield return Of("Package", outcome.Package);
            }

            if (Outlook.Brew?.Ions?.Glass is { Count: > 0 } glass)
            {
                yield return new("Glass", ion => glass.TryGetValue(ion, out Band? band) ? band.Likely : null, null);
            }
        }
    }

    /// <summary>What the glass may hold, ion by ion: malt's own is as wide as published worts.</summary>
    private string GlassBands => Outlook.Brew?.Ions is { } ions
        ? string.Join(", ", ions.Glass.Select(row => $"{row.Key.ToString().ToLowerInvariant()} {Ends(row.Value)}").Append($"phosphorus {Ends(ions.Phosphorus)}"))
        : "";

    private string Ends(Band band) => $"{Desk.Shown.Number(band.Low, 0)} to {Desk.Shown.Number(band.High, 0)}";

    private static Column Of(string title, TreatedLiquor liquor) => new(title, ion => liquor.Ions[ion], null);

    private bool IsSour => Outlook.Outcome is { } outcome && outcome.Mash.Ions.Bicarbonate < 0;

    private string Balance => ChargeText.Of(ChargeBalance.Of(Outlook.Source.Ions), Desk.Shown);

    private double? Wanted(Ion ion) => Outlook.Plan.Targets.FirstOrDefault(target => target.Ion == ion)?.MilligramsPerLitre;
}
