using Bunit;
using Gylebook.Store;
using Gylebook.Web.Features.Trouble;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

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

    [Fact]
    public void A_book_in_trouble_leaves_the_page_and_its_text_standing()
    {
        IRenderedComponent<TroubleBoundary> page = Around(() => throw new BookUnavailableException(BookTrouble.NoAccess, "book.sqlite", "Another file lies at book.sqlite now."));
        page.Find("button").Click();
        Assert.Contains("Another file lies at book.sqlite now.", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Single(page.FindAll("input"));
    }

    [Fact]
    public void Another_fault_takes_the_place_of_its_part_until_it_recovers_and_no_text_counts_as_stored()
    {
        PageSaves saves = new(() => "recipes/1");
        IRenderedComponent<TroubleBoundary> page = Around(() => throw new InvalidOperationException("secret"), saves);
        page.Find("button").Click();
        Assert.Contains("undo, history and versions", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("input"));
        Assert.True(saves.SettledAsync().IsCompletedSuccessfully);
        page.InvokeAsync(page.Instance.Recover);
        page.WaitForAssertion(() => Assert.Single(page.FindAll("input")));
    }

    private IRenderedComponent<TroubleBoundary> Around(Action act, PageSaves? saves = null) => Render<TroubleBoundary>(p =>
    {
        p.AddCascadingValue(saves ?? PageSaves.Unasked());
        p.Add(b => b.IsPart, true);
        p.AddChildContent<Faulty>(faulty => faulty.Add(f => f.Act, act));
    });

    /// <summary>A field, and a button that does what a test wants.</summary>
    private sealed class Faulty : ComponentBase
    {
        [Parameter]
        public required Action Act { get; set; }

        protected override void BuildRenderTree(RenderTreeBuilder builder)
        {
            builder.OpenElement(0, "input");
            builder.CloseElement();
            builder.OpenElement(1, "button");
            builder.AddAttribute(2, "onclick", EventCallback.Factory.Create(this, Act));
            builder.CloseElement();
        }
    }
}
