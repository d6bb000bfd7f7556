using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Reading;

/// <summary>What pages tell the terminal.</summary>
internal static partial class PageLog
{
    [LoggerMessage(1, LogLevel.Error, "A page failed.")]
    public static partial void PageFailed(this ILogger log, Exception fault);

    [LoggerMessage(2, LogLevel.Error, "This cannot be reckoned, and shows as a finding on its page. The input that did it: {Input}")]
    public static partial void NotReckoned(this ILogger log, Exception fault, string input);

    [LoggerMessage(3, LogLevel.Error, "This cannot be read from the book: {What}")]
    public static partial void NotRead(this ILogger log, Exception fault, string what);
}
