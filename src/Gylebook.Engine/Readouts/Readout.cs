using System.Globalization;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Readouts;

/// <summary>A number that can be told of a run: a row of the one table.</summary>
/// <param name="Id">Stable name: <c>originalGravity</c>.</param>
/// <param name="Title">As people say it: "original gravity, all in".</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Decimals">Digits after the point that a person makes use of.</param>
/// <param name="Place">Where in the brew it is read.</param>
/// <param name="Of">How it follows from plan, draw and what the run left; not a number where it cannot be known.</param>
public sealed record Readout(string Id, string Title, string Unit, int Decimals, Place Place, ReadoutOf Of)
{
    /// <summary>A value of it with the digits that a person makes use of: <c>1.0450</c>.</summary>
    public string Digits(double value) => value.ToString(Invariant($"F{Decimals}"), CultureInfo.InvariantCulture);

    /// <summary>The same with its unit: <c>20.0 L</c>.</summary>
    public string Told(double value) => $"{Digits(value)} {Unit}";
}

/// <summary>Reads one number off a run. Pure, and without allocation.</summary>
public delegate double ReadoutOf(in RunView run);

/// <summary>Reads one number off one portion of a run.</summary>
public delegate double PortionReadoutOf(in RunView run, int portion);
