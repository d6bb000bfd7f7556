using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Interchange;

/// <summary>When something is added, as text: <c>boil 60 min</c>, <c>knock-out</c>, <c>ferment day 3</c>.</summary>
public static class AdditionTimeText
{
    /// <summary>The forms the text can take, as a reader is told of them.</summary>
    public const string Forms = "mash, copper-up, boil N min, knock-out, stand N min, pitch, ferment day N, rack or package";

    private const double MostMinutes = 10_000;
    private const double MostDays = 10_000;

    /// <summary>Reads the text, or says what is wrong with it.</summary>
    public static bool TryParse(string text, out AdditionTime time, [NotNullWhen(false)] out string? problem)
    {
        AdditionTime? read = text.Split(' ', StringSplitOptions.RemoveEmptyEntries) switch
        {
            ["mash"] => new(AdditionPoint.Mash),
            ["copper-up"] => new(AdditionPoint.CopperUp),
            ["boil", var count, "min"] when Minutes(count) is { } minutes => new(AdditionPoint.Boil, minutes),
            ["knock-out"] => new(AdditionPoint.KnockOut),
            ["stand", var count, "min"] when Minutes(count) is { } minutes => new(AdditionPoint.Stand, minutes),
            ["pitch"] => new(AdditionPoint.Pitch),
            ["ferment", "day", var count] when Day(count) is { } day => new(AdditionPoint.Ferment, day),
            ["rack"] => new(AdditionPoint.Rack),
            ["package"] => new(AdditionPoint.Package),
            _ => null,
        };
        time = read ?? default;
        problem = read is null ? $"must be one of {Forms}, N a number from 0 and a day a whole one" : null;
        return read is not null;
    }

    /// <summary>The text for a time of addition; <see cref="TryParse"/> reads it back.</summary>
    public static string Write(AdditionTime time)
    {
        var count = time.Count.ToString("0.############", CultureInfo.InvariantCulture);
        return time.Point switch
        {
            AdditionPoint.Mash => "mash",
            AdditionPoint.CopperUp => "copper-up",
            AdditionPoint.Boil => $"boil {count} min",
            AdditionPoint.KnockOut => "knock-out",
            AdditionPoint.Stand => $"stand {count} min",
            AdditionPoint.Pitch => "pitch",
            AdditionPoint.Ferment => $"ferment day {count}",
            AdditionPoint.Rack => "rack",
            AdditionPoint.Package => "package",
            _ => throw new ArgumentOutOfRangeException(nameof(time), time, "No such place in the run."),
        };
    }

    private static double? Minutes(string text) => Number(text, NumberStyles.AllowDecimalPoint, MostMinutes);

    private static double? Day(string text) => Number(text, NumberStyles.None, MostDays);

    private static double? Number(string text, NumberStyles style, double most) =>
        double.TryParse(text, style, CultureInfo.InvariantCulture, out var number) && number <= most ? number : null;
}

/// <summary>A time of addition as a value in a file.</summary>
internal sealed class AdditionTimeForm : ValueForm<AdditionTime>
{
    public static AdditionTimeForm Only { get; } = new();

    public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Text(isLong: false);

    internal override bool TryRead(NodeCursor at, out AdditionTime value)
    {
        value = default;
        if (at.Text(int.MaxValue) is not { } text)
        {
            return false;
        }

        if (AdditionTimeText.TryParse(text, out value, out string? problem))
        {
            return true;
        }

        at.Error("at.unknown", $"\"{FindingList.Shorten(text)}\"; {problem}", text, AdditionTimeText.Forms);
        return false;
    }

    internal override Node Write(AdditionTime value) => new TextNode(AdditionTimeText.Write(value));

    internal override ObjectNode Schema(SchemaParts parts) => Node.Object(
        ("type", new TextNode("string")),
        ("pattern", new TextNode(@"^\s*(mash|copper-up|boil +[0-9]*\.?[0-9]+ +min|knock-out|stand +[0-9]*\.?[0-9]+ +min|pitch|ferment +day +[0-9]+|rack|package)\s*$")),
        SchemaParts.Example("boil 60 min"));
}
