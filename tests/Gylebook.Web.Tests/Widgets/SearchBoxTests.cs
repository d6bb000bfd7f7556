using Bunit;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components.Web;

namespace Gylebook.Web.Tests.Widgets;

/// <summary>Search as you type, by keyboard and by thumb.</summary>
public sealed class SearchBoxTests : GylebookTestContext
{
    private static readonly string[] Malts = ["pale ale malt", "Munich malt", "Vienna malt"];

    private readonly List<string> _chosen = [];

    [Fact]
    public void Entering_the_field_offers_all_and_typing_narrows_it()
    {
        IRenderedComponent<SearchBox<string>> box = Box();
        Assert.Equal("false", box.Find("input").GetAttribute("aria-expanded"));
        box.Find("input").Focus();
        Assert.Equal(3, box.FindAll("[role=option]").Count);
        box.Find("input").Input("mun");
        Assert.Equal("Munich malt", Assert.Single(box.FindAll("[role=option]")).TextContent.Trim());
        Assert.Equal("true", box.Find("input").GetAttribute("aria-expanded"));
        Assert.Equal(box.Find("[role=listbox]").Id, box.Find("input").GetAttribute("aria-controls"));
    }

    [Fact]
    public void Arrows_walk_round_the_list_and_Enter_chooses()
    {
        IRenderedComponent<SearchBox<string>> box = Box();
        box.Find("input").Focus();
        Press(box, "ArrowUp");
        Assert.Equal("Vienna malt", box.Find("[aria-selected=true]").TextContent.Trim());
        Assert.Equal(box.Find("[aria-selected=true]").Id, box.Find("input").GetAttribute("aria-activedescendant"));
        Press(box, "ArrowDown");
        Press(box, "ArrowDown");
        Press(box, "Enter");
        Assert.Equal(["Munich malt"], _chosen);
        Assert.Empty(box.FindAll("[role=option]"));
        Assert.Equal("", box.Find("input").GetAttribute("value") ?? "");
    }

    [Fact]
    public void A_thumb_chooses_too()
    {
        IRenderedComponent<SearchBox<string>> box = Box();
        box.Find("input").Focus();
        box.FindAll("[role=option]")[0].Click();
        Assert.Equal(["pale ale malt"], _chosen);
    }

    [Fact]
    public void Escape_closes_and_an_arrow_opens_again()
    {
        IRenderedComponent<SearchBox<string>> box = Box();
        box.Find("input").Focus();
        Press(box, "Escape");
        Assert.Empty(box.FindAll("[role=option]"));
        Press(box, "ArrowDown");
        Assert.Equal(3, box.FindAll("[role=option]").Count);
    }

    [Fact]
    public void Nothing_found_is_said()
    {
        IRenderedComponent<SearchBox<string>> box = Box();
        box.Find("input").Input("xyz");
        Assert.Equal("Nothing of that name.", box.Find("[role=status]").TextContent);
        Press(box, "Enter");
        Assert.Empty(_chosen);
    }

    /// <summary>Enter alone does not lead away from the page.</summary>
    [Fact]
    public void What_is_offered_otherwise_is_taken_by_arrow_and_Enter()
    {
        IRenderedComponent<SearchBox<string>> box = Box(typed => $"new: {typed}");
        box.Find("input").Input("xyz");
        Assert.Equal("new: xyz", Assert.Single(box.FindAll("[role=option]")).TextContent.Trim());
        Assert.Equal("Nothing of that name.", box.Find("[role=status]").TextContent);
        Press(box, "Enter");
        Assert.Empty(_chosen);
        Press(box, "ArrowDown");
        Press(box, "Enter");
        Assert.Equal(["new: xyz"], _chosen);
    }

    private static void Press(IRenderedComponent<SearchBox<string>> box, string key) =>
        box.Find("input").KeyDown(new KeyboardEventArgs { Key = key });

    private IRenderedComponent<SearchBox<string>> Box(Func<string, string>? otherwise = null) => Render<SearchBox<string>>(parameters => parameters
        .Add(b => b.Label, "Add a malt")
        .Add(b => b.Search, text => [.. Malts.Where(malt => malt.Contains(text, StringComparison.OrdinalIgnoreCase))])
        .Add(b => b.Otherwise, otherwise)
        .Add(b => b.TextOf, malt => malt)
        .Add(b => b.Chosen, _chosen.Add));
}
