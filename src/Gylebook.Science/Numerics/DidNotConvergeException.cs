namespace Gylebook.Science.Numerics;

/// <summary>A search found no root: numerics, neither a caller's bug nor a brewer's entry.</summary>
/// <remarks>Thrown at the public door alone; inside, <c>TryX</c> says false. See <c>docs/decisions/0002-three-failure-channels.md</c>.</remarks>
/// <param name="sought">What was looked for.</param>
/// <param name="bracket">Where.</param>
/// <param name="residual">What is left of the balance at the two ends of the bracket.</param>
public sealed class DidNotConvergeException(string sought, Bracket bracket, (double AtLow, double AtHigh) residual)
    : ArithmeticException(Invariant($"No {sought} from {bracket} balances: {residual.AtLow:g4} is left at the lower end, {residual.AtHigh:g4} at the upper."))
{
    /// <summary>Where it was looked for.</summary>
    public Bracket Bracket { get; } = bracket;

    /// <summary>What is left of the balance at the two ends.</summary>
    public (double AtLow, double AtHigh) Residual { get; } = residual;
}
