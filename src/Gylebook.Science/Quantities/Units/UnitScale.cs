namespace Gylebook.Science.Quantities;

/// <summary>Turns a number of one scale into a number of another; false where the relation does not hold.</summary>
/// <param name="value">The number to turn.</param>
/// <param name="turned">What it becomes.</param>
public delegate bool ScaleTurn(double value, out double turned);

/// <summary>How a number in some unit and a number in the base unit of its kind belong together.</summary>
public abstract record UnitScale
{
    /// <summary>The base unit itself.</summary>
    public static LinearScale Base { get; } = new(1);

    /// <summary>One such unit is that many base units.</summary>
    public static LinearScale Times(double baseUnits) => new(baseUnits);

    /// <summary>That many such units are one base unit.</summary>
    public static LinearScale PerBase(double units) => new(units) { Divides = true };

    /// <summary>What a number in this unit is in the base unit.</summary>
    public abstract bool TryToBase(double number, out double inBase);

    /// <summary>What a number in the base unit is in this unit.</summary>
    public abstract bool TryFromBase(double inBase, out double number);
}

/// <summary>A straight line: base = (number − <see cref="Zero"/>) × factor + <see cref="Offset"/>.</summary>
/// <remarks>One way multiplies and the other divides by the very same factor, so that a value comes back as it went.</remarks>
/// <param name="Factor">The factor, as its definition states it.</param>
public sealed record LinearScale(double Factor) : UnitScale
{
    /// <summary>Whether the factor counts units in a base unit, and so divides on the way there.</summary>
    public bool Divides { get; init; }

    /// <summary>Taken off the number first: 32 for Fahrenheit.</summary>
    public double Zero { get; init; }

    /// <summary>Added at the end, in base units.</summary>
    public double Offset { get; init; }

    /// <inheritdoc/>
    public override bool TryToBase(double number, out double inBase)
    {
        inBase = (Divides ? (number - Zero) / Factor : (number - Zero) * Factor) + Offset;
        return true;
    }

    /// <inheritdoc/>
    public override bool TryFromBase(double inBase, out double number)
    {
        number = (Divides ? (inBase - Offset) * Factor : (inBase - Offset) / Factor) + Zero;
        return true;
    }
}

/// <summary>A curve from a published table or formula, with the range it holds for.</summary>
/// <param name="ToBase">From this unit to the base unit.</param>
/// <param name="FromBase">And back.</param>
/// <param name="ValidFor">The range, as it stands in messages: "0.95 to 1.18 SG".</param>
public sealed record CurvedScale(ScaleTurn ToBase, ScaleTurn FromBase, string ValidFor) : UnitScale
{
    /// <inheritdoc/>
    public override bool TryToBase(double number, out double inBase) => ToBase(number, out inBase);

    /// <inheritdoc/>
    public override bool TryFromBase(double inBase, out double number) => FromBase(inBase, out number);
}
