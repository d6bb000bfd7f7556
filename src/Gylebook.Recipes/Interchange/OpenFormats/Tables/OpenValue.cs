using Gylebook.Recipes.Documents;

namespace Gylebook.Recipes.Interchange.OpenFormats.Tables;

/// <summary>A value of somebody else's file while it is read or written, with its path and the list that takes what happens to it.</summary>
/// <param name="Path">Where it stands in that file.</param>
/// <param name="Travels">Takes what happens.</param>
internal readonly record struct OpenCursor(string Path, TravelList Travels)
{
    /// <summary>A field of it.</summary>
    public OpenCursor At(string key) => this with { Path = Path.Length == 0 ? FindingList.Shorten(key) : $"{Path}.{FindingList.Shorten(key)}" };

    /// <summary>An item of it.</summary>
    public OpenCursor At(int place) => this with { Path = Invariant($"{Path}[{place}]") };

    public void Leave(string words) => Travels.Leave(Path, words);

    public void Convert(string words) => Travels.Convert(Path, words);

    public void Repair(string words) => Travels.Repair(Path, words);

    public void Default(string words) => Travels.Default(Path, words);
}

/// <summary>A kind of value in somebody else's file, whatever field holds it.</summary>
/// <typeparam name="T">What it is here.</typeparam>
internal abstract class OpenValue<T>
{
    /// <summary>Reads it; false, and told why, when it cannot be read.</summary>
    public abstract bool TryRead(Node node, OpenCursor at, out T value);

    /// <summary>The value as that file has it.</summary>
    public abstract Node Write(T value, OpenCursor at);

    /// <summary>Tells that a value is of another sort than wanted, and stays behind.</summary>
    protected static bool IsNot(Node node, OpenCursor at, string wanted)
    {
        at.Leave($"{Quoted(node)}; must be {wanted}");
        return false;
    }

    /// <summary>A value in a few words.</summary>
    protected static string Quoted(Node node) => OpenWords.Quoted(node);
}

/// <summary>Values of others in a few words of ours.</summary>
internal static class OpenWords
{
    /// <summary>A value in a few words.</summary>
    public static string Quoted(Node node) => node switch
    {
        TextNode { Text: var text } => $"\"{FindingList.Shorten(text)}\"",
        BareNode bare => FindingList.Shorten(bare.Written),
        ObjectNode pairs when pairs["value"] is { } value && pairs["unit"] is TextNode unit && value is not (ObjectNode or ListNode) => $"{Quoted(value).Trim('"')} {FindingList.Shorten(unit.Text)}",
        _ => node.Sort,
    };

    /// <summary>Whether a value says nothing.</summary>
    public static bool IsNothing(Node node) => node is BareNode { IsNull: true } or TextNode { Text: "" } or ListNode { Items.IsEmpty: true };
}
