
namespace Gylebook.Science.Foods.Labels;

/// <summary>What a line of a panel says: a number, "less than" a number, or nothing.</summary>
/// <remarks>
/// A negative number is kept as typed, so that it can be reported with its line. <c>default</c> is a line that is not
/// on the panel.
/// </remarks>
public readonly record struct PrintedValue
{
    private PrintedValue(double number, PrintedForm form) =>
        (Number, Form) = (Argument.MustBeWithin(number, double.MinValue, double.MaxValue), form);

    /// <summary>The number as printed; 0 for a line that is not there.</summary>
    public double Number { get; }

    /// <summary>How it is printed.</summary>
    public PrintedForm Form { get; }

    /// <summary>A line that is not on the panel.</summary>
    public static PrintedValue Absent => default;

    /// <summary>Whether the line is on the panel.</summary>
    public bool IsPrinted => Form != PrintedForm.Absent;

    /// <summary>A plain number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or not a number.</exception>
    public static PrintedValue Of(double number) => new(number, PrintedForm.Number);

    /// <summary>"Less than" that number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or not a number.</exception>
    public static PrintedValue LessThan(double number) => new(number, PrintedForm.LessThan);

    /// <inheritdoc/>
    public override string ToString() => Form switch
    {
        PrintedForm.Number => Invariant($"{Number:0.####}"),
        PrintedForm.LessThan => Invariant($"<{Number:0.####}"),
        _ => "not printed",
    };
}

/// <summary>The forms a line of a panel can take.</summary>
public enum PrintedForm
{
    /// <summary>The line is not on the panel.</summary>
    Absent,

    /// <summary>A plain number, zero included.</summary>
    Number,

    /// <summary>"Less than 1 g", "&lt;0.5 g".</summary>
    LessThan,
}
