using Gylebook.Forecast.Solving;
using Gylebook.Science.Quantities;

namespace Gylebook.Terminal;

/// <summary>What was wished or held, in words.</summary>
internal static class WishWords
{
    /// <summary>What it is of.</summary>
    public static string Name(WishReached reached) => reached.Readout switch
    {
        "packagedLitres" => "packaged",
        "originalGravity" => "original gravity",
        "bitterness" => "bitterness",
        "alcoholByVolume" => "alcohol",
        "colourSrm" => "colour",
        "cells" => "cells pitched of those wanted",
        _ => "gas",
    };

    /// <summary>A number of it, with its unit.</summary>
    public static string Number(WishReached reached, double number) => reached.Readout switch
    {
        "packagedLitres" => Invariant($"{number:0.0} L"),
        "originalGravity" => Invariant($"{number:0.0000}"),
        "bitterness" => Invariant($"{number:0.0} IBU"),
        "alcoholByVolume" => Invariant($"{number:0.00} %"),
        "colourSrm" => Invariant($"{BeerColour.FromSrm(number).Ebc:0.0} EBC ({number:0.0} SRM)"),
        "cells" => Invariant($"{100 * number:0} %"),
        _ => Invariant($"{number:0.00} volumes"),
    };
}
