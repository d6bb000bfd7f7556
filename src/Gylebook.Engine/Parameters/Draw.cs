namespace Gylebook.Engine.Parameters;

/// <summary>One number for each parameter of a plan: all that is uncertain of a brew, decided for once.</summary>
/// <remarks>A run is a function of it: at the medians it is the likely brew, and thousands of draws make the bands.</remarks>
public readonly ref struct Draw
{
    private readonly ReadOnlySpan<double> _values;

    /// <summary>The numbers, in the order of the plan's parameters.</summary>
    public Draw(ReadOnlySpan<double> values) => _values = values;

    /// <summary>The number of a parameter that every run has.</summary>
    public double this[Known parameter] => _values[(int)parameter];

    /// <summary>The number of a parameter that this plan has besides.</summary>
    public double this[Slot slot] => _values[slot.Index];

    /// <summary>The number of a parameter that the plan may lack.</summary>
    public double Or(Slot? slot, double otherwise) => slot is { } there ? this[there] : otherwise;

    /// <summary>The numbers of a block, in its order.</summary>
    internal ReadOnlySpan<double> Of(SlotBlock block, int count) => _values.Slice(block.First, count);

    /// <summary>The numbers themselves.</summary>
    public ReadOnlySpan<double> Values => _values;

    /// <summary>Numbers as a draw.</summary>
    public static implicit operator Draw(double[] values) => new(values);
}
