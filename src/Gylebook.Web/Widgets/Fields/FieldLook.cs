using Gylebook.Recipes.Forms;

namespace Gylebook.Web.Widgets.Fields;

/// <summary>How a field looks, by the kind of value its form gives it.</summary>
/// <param name="As">How its text is shown and kept.</param>
internal sealed record FieldLook(FieldText As)
{
    /// <summary>The few words it can hold; null when it can hold any text.</summary>
    public IReadOnlyList<string>? Words { get; private init; }

    /// <summary>Whether it is answered by yes or no.</summary>
    public bool IsFlag { get; private init; }

    /// <summary>Whether several lines may be typed.</summary>
    public bool IsLong { get; private init; }

    /// <summary>Whether it is a part with fields of its own.</summary>
    public bool IsPart { get; private init; }

    /// <summary>Whether it is a list, which a page lays out itself.</summary>
    public bool IsList { get; private init; }

    /// <summary>Whether it holds figures, which stand to the right.</summary>
    public bool IsFigure => As != FieldText.Plain;

    /// <summary>The look of a field.</summary>
    public static FieldLook Of(Field field) => field.Value.Accept(Looks.Only) ?? new FieldLook(FieldText.Plain);

    private sealed class Looks : ValueFormSorter<FieldLook>
    {
        public static Looks Only { get; } = new();

        public override FieldLook Quantity<T>() => new(FieldText.Of<T>());

        public override FieldLook Number() => new(FieldText.Number);

        public override FieldLook Amount() => new(FieldText.Amount);

        public override FieldLook Choice(IReadOnlyList<string> words) => new(FieldText.Plain) { Words = words };

        public override FieldLook Flag() => new(FieldText.Plain) { IsFlag = true };

        public override FieldLook Part(IReadOnlyList<Field> fields) => new(FieldText.Plain) { IsPart = true };

        public override FieldLook List(ValueForm item) => new(FieldText.Plain) { IsList = true };

        public override FieldLook Text(bool isLong) => new(FieldText.Plain) { IsLong = isLong };
    }
}
