using Bunit;
using Gylebook.Store;
using Gylebook.Web.Features.Trouble;

namespace Gylebook.Web.Tests.Features;

/// <summary>What a person reads when something breaks.</summary>
public sealed class TroubleTests : GylebookTestContext
{
    [Fact]
    public void A_book_in_trouble_says_what_to_do()
    {
        BookUnavailableException full = new(BookTrouble.DiskFull, "book.sqlite", "The disk has no room left for book.sqlite.");
        IRenderedComponent<TroubleNote> note = Render<TroubleNote>(p => p.Add(n => n.Fault, full));
        Assert.Equal(full.Message, note.Find("[role=alert]").TextContent);
    }

    [Fact]
    public void Anything_else_keeps_its_secrets()
    {
        InvalidOperationException fault = new("secret detail at Gylebook.Somewhere");
        IRenderedComponent<TroubleNote> note = Render<TroubleNote>(p => p.Add(n => n.Fault, fault));
        Assert.DoesNotContain("secret", note.Markup, StringComparison.Ordinal);
        Assert.Contains("Something went wrong", note.Find("h1").TextContent, StringComparison.Ordinal);
    }
}
