using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys of a pH meter's reading: no pH without the temperature of its sample.</summary>
internal static class MeterReader
{
    private const double LowestPh = 4;
    private const double HighestPh = 7.5;

    /// <summary>Mash pH was measured from room temperature to mashing out, and is known nowhere else.</summary>
    private const double Coldest = 15;
    private const double Hottest = 80;

    /// <param name="at">The object.</param>
    /// <param name="acids">The plan's acids, of which some may be in already; null where none can be.</param>
    internal static MeterReading Read(ObjectReader at, IReadOnlyList<OfferedAcid>? acids)
    {
        double ph = at.Need("ph")?.Number(LowestPh, HighestPh) ?? LowestPh;
        Entered<Temperature> sample = at.Quantity<Temperature>("sample");
        if (sample.Text is not null && sample.Value.Celsius is < Coldest or > Hottest)
        {
            string limit = Invariant($"{Coldest} to {Hottest} °C");
            at.Findings.Error("sample.temperature", at.PathOf("sample"), $"{sample.Text}; must be {limit}", sample.Text, limit);
        }

        return new MeterReading(ph, sample, acids is null ? null : Acid(at, acids));
    }

    private static double? Acid(ObjectReader at, IReadOnlyList<OfferedAcid> acids)
    {
        if (acids.Count > 0)
        {
            return acids[0].Acid.Unit == DoseUnit.Gram
                ? at.OptionalQuantity<Mass>("acid")?.Value.Grams
                : at.OptionalQuantity<VolumeAt20C>("acid")?.Value.Millilitres;
        }

        if (at.Take("acid") is not null)
        {
            at.Findings.Error("reading.acid", at.PathOf("acid"), "says how much of the plan's acid was in, but the plan offers none");
        }

        return null;
    }
}
