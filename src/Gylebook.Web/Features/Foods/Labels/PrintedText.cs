namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>The text of a printed figure, in the pieces a thumb sets apart: the number, "less than", the unit.</summary>
/// <param name="Number">The number as typed, <c>&lt;</c> before it for "less than"; the whole text where there is no number in it.</param>
/// <param name="Unit">The unit; null when there is none.</param>
internal readonly record struct PrintedText(string Number, string? Unit)
{
    private const string LessThanWords = "less than";

    /// <summary>Whether it is "less than".</summary>
    public bool IsLess => Number.StartsWith('<');

    /// <summary>Whether there is a number in it.</summary>
    public bool HasNumber => Number.Any(char.IsAsciiDigit);

    /// <summary>Takes a text apart: <c>&lt; 1 g</c>, <c>less than 1 g</c>, <c>2,5</c>.</summary>
    public static PrintedText Of(string text)
    {
        string left = text.Trim();
        bool isLess = left.StartsWith('<');
        bool isLessInWords = left.StartsWith(LessThanWords, StringComparison.OrdinalIgnoreCase);
        left = (isLess ? left[1..] : isLessInWords ? left[LessThanWords.Length..] : left).Trim();
        string unit = new([.. left.Reverse().TakeWhile(char.IsLetter).Reverse()]);
        PrintedText pieces = new((isLess || isLessInWords ? "<" : "") + left[..^unit.Length].TrimEnd(), unit.Length == 0 ? null : unit);
        return pieces.HasNumber ? pieces : new(text.Trim(), null);
    }

    /// <summary>The same, less than it or no longer.</summary>
    public PrintedText WithLess(bool isLess) => this with { Number = (isLess ? "<" : "") + Number.TrimStart('<') };

    /// <summary>As a file keeps it: <c>2 g</c>, <c>&lt;1 g</c>; with its own unit, or else that one.</summary>
    public string InFull(string unit) => HasNumber ? $"{Number} {Unit ?? unit}" : Number;
}
