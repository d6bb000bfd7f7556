using Markdig;

namespace Gylebook.Site.Leaves;

/// <summary>A brewer's story, typed as Markdown, as a page shows it: paragraphs, lists, emphasis, links. HTML in it is text like any other.</summary>
internal static class Story
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().DisableHeadings().Build();

    /// <summary>As HTML.</summary>
    public static string Html(string typed)
    {
        Markdig.Syntax.MarkdownDocument read = Markdown.Parse(typed, Pipeline);
        foreach (Markdig.Syntax.Inlines.LinkInline link in Markdig.Syntax.MarkdownObjectExtensions.Descendants<Markdig.Syntax.Inlines.LinkInline>(read))
        {
            // A picture would be asked of another host, and a script is no place to go to.
            link.IsImage = false;
            link.Url = IsSafe(link.Url) ? link.Url : "";
        }

        return read.ToHtml(Pipeline);
    }

    /// <summary>As plain words.</summary>
    public static string Plain(string typed) => Markdown.ToPlainText(typed, Pipeline).Trim();

    private static bool IsSafe(string? address) => Uri.TryCreate(address, UriKind.Absolute, out Uri? to) && (to.Scheme == Uri.UriSchemeHttps || to.Scheme == Uri.UriSchemeHttp || to.Scheme == Uri.UriSchemeMailto);
}
