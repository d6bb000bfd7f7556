using Gylebook.Tests.Shared;
using Gylebook.Web.Widgets.Words;

namespace Gylebook.Web.Tests.Widgets;

public sealed class GlossaryTests
{
    [Fact]
    public void Every_row_of_the_page_is_a_word()
    {
        int rows = File.ReadLines(RepositoryFile.PathOf("docs/glossary.md")).Count(line => line.StartsWith("| ", StringComparison.Ordinal)) - 1;
        Assert.Equal(rows, Glossary.All.Count);
        Assert.True(rows > 40);
        Assert.Equal("flame off, the end of the boil", Glossary.All["Knock-out"]);
        Assert.DoesNotContain(Glossary.All.Values, means => means.Contains('`', StringComparison.Ordinal) || means.Contains('*', StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("cast: 20.9 L at 1.052", "cast")]
    [InlineData("castle", "")]
    [InlineData("Residual alkalinity of liquor", "Residual alkalinity,liquor")]
    [InlineData("pitch, and pitch again", "pitch")]
    [InlineData("", "")]
    public void Whole_words_are_found_the_longest_first_each_once_and_nothing_of_the_text_is_lost(string text, string words)
    {
        Assert.Equal(words, string.Join(',', Glossary.PiecesOf(text).Where(piece => piece.Means is not null).Select(piece => piece.Text)));
        Assert.Equal(text, string.Concat(Glossary.PiecesOf(text).Select(piece => piece.Text)));
    }
}
