using System.Text.Json;
using Gylebook.Recipes.Interchange.Json;

namespace Gylebook.Recipes.Interchange;

/// <summary>Opens a file of one of our forms, checks that it is of the form wanted, and reads it.</summary>
/// <param name="Format">What its <c>format</c> key must say: <c>gylebook-recipe/1</c>.</param>
/// <param name="Read">Reads the keys.</param>
/// <typeparam name="T">What the file holds.</typeparam>
internal sealed record FileForm<T>(string Format, Func<ObjectReader, T> Read)
    where T : class
{
    internal Reading<T> From(string text)
    {
        var findings = new FindingList();
        using var document = JsonText.Open(text, findings);
        return From(document, findings);
    }

    internal Reading<T> From(Stream stream)
    {
        var findings = new FindingList();
        using var document = JsonText.Open(stream, findings);
        return From(document, findings);
    }

    internal Reading<T> From(ReadOnlyMemory<byte> bytes)
    {
        var findings = new FindingList();
        using var document = JsonText.Open(bytes, findings);
        return From(document, findings);
    }

    private Reading<T> From(JsonDocument? document, FindingList findings)
    {
        if (document is null)
        {
            return new Reading<T>(null, findings.All);
        }

        var file = new ObjectReader(new JsonCursor(document.RootElement, "", findings));
        if (!IsOfThisForm(file))
        {
            return new Reading<T>(null, findings.All);
        }

        var value = Read(file);
        file.Finish();
        return new Reading<T>(findings.HasErrors ? null : value, findings.All);
    }

    /// <summary>A file that says it is of another form is not read as this one; a file that says nothing is.</summary>
    private bool IsOfThisForm(ObjectReader file)
    {
        if (file.Need("format")?.Text(int.MaxValue) is not { } stated || stated == Format)
        {
            return true;
        }

        file.Findings.Error("format.wrong", "format", $"\"{FindingList.Shorten(stated)}\"; must be \"{Format}\"", stated, Format);
        return false;
    }
}
