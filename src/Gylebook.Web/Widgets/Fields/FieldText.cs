using Gylebook.Pictures;
using Gylebook.Science.Quantities;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Widgets.Fields;

/// <summary>How a field's text is shown to a reader, and what of their typing goes into the draft.</summary>
public abstract class FieldText
{
    /// <summary>Text is text.</summary>
    public static FieldText Plain { get; } = new PlainText();

    /// <summary>Litres and the like.</summary>
    public static FieldText Volume { get; } = Of<VolumeAt20C>();

    /// <summary>Degrees.</summary>
    public static FieldText Temperature { get; } = Of<Temperature>();

    /// <summary>Minutes, hours, days.</summary>
    public static FieldText Time { get; } = Of<Duration>();

    /// <summary>Volumes of gas.</summary>
    public static FieldText Carbonation { get; } = Of<Carbonation>();

    /// <summary>Per cent.</summary>
    public static FieldText Share { get; } = Of<Fraction>();

    /// <summary>Gravity, in SG or °P.</summary>
    public static FieldText Gravity { get; } = Of<SpecificGravity>();

    /// <summary>Bitterness, in IBU.</summary>
    public static FieldText Bitterness { get; } = Of<Bitterness>();

    /// <summary>A malt's colour.</summary>
    public static FieldText Colour { get; } = Of<MaltColour>();

    /// <summary>A number without a unit.</summary>
    public static FieldText Number { get; } = new BareNumber();

    /// <summary>A weight, or what a jug measured.</summary>
    public static FieldText Amount { get; } = new MassOrVolume();

    /// <summary>A number with a unit.</summary>
    /// <typeparam name="T">Which quantity.</typeparam>
    public static FieldText Of<T>()
        where T : struct, IQuantity<T> => OfQuantity<T>.Only;

    /// <summary>What the field shows of the draft's text; text that cannot be read is shown as it is.</summary>
    public abstract string Show(string text, ReaderUnits units);

    /// <summary>What goes into the draft; text that cannot be read goes in as it is.</summary>
    public abstract string Keep(string typed, string? before, ReaderUnits units);

    private sealed class PlainText : FieldText
    {
        public override string Show(string text, ReaderUnits units) => text;

        public override string Keep(string typed, string? before, ReaderUnits units) => typed;
    }

    private sealed class BareNumber : FieldText
    {
        public override string Show(string text, ReaderUnits units) => units.DecimalSign == DecimalSign.Comma ? text.Replace('.', ',') : text;

        public override string Keep(string typed, string? before, ReaderUnits units) => typed;
    }

    private sealed class OfQuantity<T> : FieldText
        where T : struct, IQuantity<T>
    {
        public static OfQuantity<T> Only { get; } = new();

        public override string Show(string text, ReaderUnits units) =>
            UnitTable.TryParse(text, out Entered<T> entered, out _) ? TypedText.Show(entered, units) : text;

        public override string Keep(string typed, string? before, ReaderUnits units) =>
            TypedText.TryRead(typed, before, units, out Entered<T> entered, out _) ? entered.Text : typed;
    }

    private sealed class MassOrVolume : FieldText
    {
        private static readonly FieldText Weighed = Of<Mass>();

        public override string Show(string text, ReaderUnits units) => IsVolume(text) ? Volume.Show(text, units) : Weighed.Show(text, units);

        public override string Keep(string typed, string? before, ReaderUnits units) =>
            UnitTable.LooksLike<VolumeAt20C>(typed) || (before is not null && IsVolume(before) && IsBare(typed))
                ? Volume.Keep(typed, before, units)
                : Weighed.Keep(typed, before, units);

        private static bool IsVolume(string text) => UnitTable.TryParse<VolumeAt20C>(text, out _, out _);

        private static bool IsBare(string text) => text.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or ' ');
    }
}
