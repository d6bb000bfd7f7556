using Gylebook.Pictures;
using Gylebook.Science.Water;

namespace Gylebook.Web.Features.Liquors.Showing;

/// <summary>A charge balance in words.</summary>
internal static class ChargeText
{
    /// <summary>Cations against anions, in per cent, with its sign: <c>+1.5 %</c>.</summary>
    public static string Of(ChargeBalance balance, Shown shown) =>
        $"{(balance.ErrorPercent > 0 ? "+" : "")}{shown.Number(balance.ErrorPercent, 1)}{Shown.Space}%";
}
