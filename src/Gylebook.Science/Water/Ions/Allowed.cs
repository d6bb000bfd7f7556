using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;

namespace Gylebook.Science.Water;

/// <summary>Limits of plain numbers that have a name and a unit but no quantity of their own; NaN is outside all of them.</summary>
internal static class Allowed
{
    internal static readonly QuantityLimits Ph = new("pH", "", 0, 14);

    /// <summary>Where a pH is looked for.</summary>
    internal static readonly Bracket PhScale = new(Ph.Low, Ph.High);

    internal static readonly QuantityLimits MilligramsPerLitre = new("Ion", "mg/L", 0, 1e6);
    internal static readonly QuantityLimits SignedMilligramsPerLitre = new("Bicarbonate", "mg/L", -1e6, 1e6);
    internal static readonly QuantityLimits Alkalinity = new("Alkalinity", "mEq/L", -1e4, 1e4);
    internal static readonly QuantityLimits TotalCarbonate = new("Total carbonate", "mmol/L", 0, 1e4);
    internal static readonly QuantityLimits IonicStrength = new("Ionic strength", "mol/L", 0, 0.5);
    internal static readonly QuantityLimits LiquidWater = new("Temperature", "°C", 0, 90);
    internal static readonly QuantityLimits Pressure = new("CO2 pressure", "atm", 1e-9, 10);
}
