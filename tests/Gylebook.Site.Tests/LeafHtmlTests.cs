using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using Gylebook.Recipes.Ingredients;
using Gylebook.Site.Leaves;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Tests;

/// <summary>The published page: whole without a script, small, in both units, and nothing typed becomes markup.</summary>
public sealed partial class LeafHtmlTests
{
    /// <summary>The budget, of the page alone.</summary>
    private const int MostBytes = 60_000;

    public static TheoryData<string> Samples() => [.. Given.Samples];

    [Theory]
    [MemberData(nameof(Samples))]
    public void All_that_goes_in_every_step_and_every_allergen_stands_on_it_in_both_units(string sample)
    {
        Leaf leaf = Given.Leaf(sample);
        string page = Words(LeafHtml.Page(leaf, [], null));
        foreach (var row in leaf.Metric.Parts.SelectMany(part => part.Rows).Concat(leaf.Other.Parts.SelectMany(part => part.Rows)))
        {
            Assert.All(row.What.Split(", "), word => Assert.Contains(word, page, StringComparison.Ordinal));
            Assert.Contains(row.Amount, page, StringComparison.Ordinal);
        }

        Assert.All(leaf.Steps, step => Assert.Contains($"{step.Title.Split(' ')[0]}", page, StringComparison.Ordinal));
        Assert.All(leaf.Metric.Allergens, sentence => Assert.Contains(sentence, page, StringComparison.Ordinal));
        Assert.True(leaf.Inputs.Recipe.Ingredients.Count(line => !line.Amount.IsNothing) <= leaf.Metric.Parts.Sum(part => part.Rows.Count));
        Assert.Contains("US gal", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_is_under_the_budget_packed(string sample)
    {
        byte[] plain = Encoding.UTF8.GetBytes(LeafHtml.Page(Given.Leaf(sample), [], null));
        using MemoryStream packed = new();
        using (GZipStream zip = new(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            zip.Write(plain);
        }

        TestContext.Current.TestOutputHelper!.WriteLine($"{sample}: {plain.Length} bytes, packed {packed.Length}");
        Assert.InRange(packed.Length, 1, MostBytes);
    }

    [Fact]
    public void Nothing_is_asked_of_another_host_and_no_script_or_style_stands_inside()
    {
        string page = LeafHtml.Page(Given.Leaf("hedgerow-brown"), [("recipe.json", "the recipe's file")], new Uri("https://example.org/beer/hedgerow-brown/"));
        Assert.Contains($"<meta http-equiv=\"Content-Security-Policy\" content=\"{LeafHtml.Policy.Replace("'", "&#39;", StringComparison.Ordinal)}\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain(" style=", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<style", page, StringComparison.Ordinal);
        Assert.DoesNotMatch(Handler(), page);
        Assert.All(Script().Matches(page), script => Assert.Matches("application/ld\\+json|src=\"\\.\\./leaf\\.js\"", script.Value));
        Assert.All(Asked().Matches(page), link => Assert.DoesNotContain("//", link.Groups[1].Value, StringComparison.Ordinal));
    }

    [Fact]
    public void What_was_typed_is_text_and_never_markup()
    {
        const string Typed = "</script><script>alert(1)</script><img src=x onerror=alert(2)>\"'&";
        Publication publication = Given.Of("plain-bitter", recipe => recipe with
        {
            Name = $"Bitter {Typed}",
            Story = $"A story {Typed}\n\n[here](javascript:alert(3)) ![there](https://elsewhere.example/x.png) <b>bold</b>",
            Ingredients = [.. recipe.Ingredients.Select(line => line.Kind == IngredientKind.Hop ? line with { As = $"Hop {Typed}" } : line)],
        });
        Leaf leaf = Leaf.Of(publication with { By = Typed, Errata = [new(Given.Day, 3, Typed)], Measured = [new(Typed, Typed, 1, 1, 2, 3)] }).Leaf!;
        string page = LeafHtml.Page(leaf, [], null);

        Assert.Equal(2, Script().Count(page));
        Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>bold", page, StringComparison.Ordinal);
        Assert.DoesNotContain("href=\"javascript:", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch(Handler(), Value().Replace(page, "=\"\""));
        Assert.DoesNotContain("elsewhere.example", Asked().Matches(page).Where(link => link.Value.StartsWith("src", StringComparison.Ordinal)).Select(link => link.Value));
    }

    [Fact]
    public void A_story_keeps_its_paragraphs_and_emphasis()
    {
        string page = LeafHtml.Page(Given.Leaf("plain-bitter", recipe => recipe with { Story = "In *autumn*.\n\nIn **winter**, [more](https://example.org/)." }), [], null);
        Assert.Contains("<p>In <em>autumn</em>.</p>", page, StringComparison.Ordinal);
        Assert.Contains("<strong>winter</strong>", page, StringComparison.Ordinal);
        Assert.Contains("href=\"https://example.org/\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_put_right_and_what_was_measured_is_told()
    {
        Publication publication = Given.Of("plain-bitter") with
        {
            Brewed = new(2027, 2, 1),
            Errata = [new(new(2027, 3, 4), 3, "The boil wants a larger kettle.")],
            Measured = [new("Gravity at cast", "SG", 3, 1.040, 1.044, 1.047), new("Beer packaged", "L at 20 °C", 1, null, null, 18.9)],
        };
        string page = Words(LeafHtml.Page(Leaf.Of(publication).Leaf!, [], null));
        Assert.Contains("4 March 2027, of version 3: The boil wants a larger kettle.", page, StringComparison.Ordinal);
        Assert.Contains("1.040 to 1.044", page, StringComparison.Ordinal);
        Assert.Contains("1.047, outside", page, StringComparison.Ordinal);
        Assert.Contains("18.9\u00A0L", page, StringComparison.Ordinal);
        Assert.Contains("brewed 1 February 2027", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_plain_texts_tell_the_same()
    {
        Leaf leaf = Given.Leaf("hedgerow-brown", recipe => recipe with { Story = "Mud and *seed*." });
        string said = LeafText.Whole(leaf), brief = LeafText.Brief(leaf);
        Assert.DoesNotContain('\u00A0', said);
        Assert.Contains("Mud and seed.", said, StringComparison.Ordinal);
        Assert.All(leaf.Metric.Parts.SelectMany(part => part.Rows), row => Assert.Contains(row.What.Replace('\u00A0', ' '), brief, StringComparison.Ordinal));
        Assert.All(leaf.Metric.Allergens, sentence => Assert.Contains(sentence, brief, StringComparison.Ordinal));
        Assert.All(leaf.Steps.SelectMany(step => step.Cautions), caution => Assert.Contains("Take care: ", said, StringComparison.Ordinal));
        Assert.True(brief.Length < said.Length / 2);
    }

    /// <summary>The page as it is read: without tags, entities written out.</summary>
    private static string Words(string page) => Break().Replace(System.Net.WebUtility.HtmlDecode(Tag().Replace(page, "")), " ");

    [GeneratedRegex("[ \n]+")]
    private static partial Regex Break();

    [GeneratedRegex("=\"[^\"]*\"")]
    private static partial Regex Value();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("<script[^>]*>")]
    private static partial Regex Script();

    [GeneratedRegex("<[^>]* on[a-z]+=")]
    private static partial Regex Handler();

    [GeneratedRegex("(?:src|href)=\"([^\"]*)\"(?=[^>]*(?:rel=\"(?:stylesheet|icon)\"|type=\"module\"))|src=\"([^\"]*)\"")]
    private static partial Regex Asked();
}
