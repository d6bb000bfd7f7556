using Gylebook.Gyles.BrewDay;
using Gylebook.Pictures;

namespace Gylebook.Web.Features.Gyles;

/// <summary>Numbers of a step in the reader's units.</summary>
internal static class AimText
{
    /// <summary>What was planned.</summary>
    public static string Likely(StepAim aim, Shown shown) => Of(aim.Likely, aim, shown);

    /// <summary>Low to high.</summary>
    public static string Ends(StepAim aim, Shown shown) => $"{Of(aim.Low, aim, shown)} to {Of(aim.High, aim, shown)}";

    private static string Of(double value, StepAim aim, Shown shown) => aim.Unit switch
    {
        "SG" => shown.Gravity(value),
        "L" or "L at 20 °C" => shown.Litres(value),
        "°C" => shown.Celsius(value),
        _ => $"{shown.Number(value, aim.Decimals)} {aim.Unit}",
    };
}
