using System.Text;
using Gylebook.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Hosting;

/// <summary>What the book holds, given out as the files it is.</summary>
internal static class FileDownloads
{
    /// <summary>Answers the addresses of <see cref="PageUrls.File"/>.</summary>
    public static void Map(WebApplication site) => site.MapGet("/files/{kind}/{id:guid}", GiveAsync);

    private static async Task<IResult> GiveAsync(string kind, Guid id, Book book, CancellationToken cancellation) =>
        !BookFiles.Kinds.Contains(kind) || await book.Files.FindAsync(kind, id, cancellation) is not { } file ? Results.NotFound()
        : file.IsDamaged ? Results.Text($"{file} is damaged: its text is not what was written. Its page shows the sound texts there are.", "text/plain", Encoding.UTF8, StatusCodes.Status409Conflict)
        : Results.File(Encoding.UTF8.GetBytes(file.Text), "application/json", $"{FreeId.From(file.Name, kind)}.json");
}
