using Gylebook.Forecast.Json;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.Arrivals;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Store;
using Gylebook.Web.Features.Files;

namespace Gylebook.Terminal;

/// <summary>A file that was to enter the book, and what became of it.</summary>
/// <param name="Path">Where it lies, as typed.</param>
/// <param name="Findings">What was found.</param>
internal abstract record TakenFile(string Path, IReadOnlyList<Finding> Findings)
{
    /// <summary>Whether what it says is in the book now.</summary>
    public abstract bool IsIn { get; }

    /// <summary>What became of it, in a sentence.</summary>
    protected abstract string InWords { get; }

    /// <summary>Reads a file, of ours or of an open standard, and puts it into the book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="path">Where the file lies.</param>
    /// <param name="answer">What to do when its name is there already.</param>
    /// <param name="evenUnreadable">Whether it enters although fields of it cannot be read.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public static async Task<TakenFile> TakeAsync(Book book, string path, ClashAnswer answer, bool evenUnreadable, CancellationToken cancellation)
    {
        List<Finding> unopened = [];
        if (!OpenedFiles.TryOpen(path, unopened, out FileStream? stream))
        {
            return new ImportedFile(path, null, unopened, null);
        }

        using (stream)
        {
            if (FileInHand.BytesOf(stream!) is not { } bytes)
            {
                FileInHand large = FileInHand.TooLarge(stream!.Length);
                return new ImportedFile(path, large, large.Findings, null);
            }

            return OpenFile.Is(bytes.Span)
                ? await LandAsync(book, path, bytes, cancellation)
                : await ImportedFile.TakeAsync(book, path, FileInHand.Read(bytes), answer, evenUnreadable, cancellation);
        }
    }

    private static async Task<LandedFile> LandAsync(Book book, string path, ReadOnlyMemory<byte> bytes, CancellationToken cancellation)
    {
        string name = System.IO.Path.GetFileName(path);
        Arrival arrival = OpenFile.Read(bytes, await ArrivalDesk.WishesAsync(book, cancellation))!;
        return new LandedFile(path, arrival, arrival.Files.Count == 0 ? null : await ArrivalDesk.LandAsync(book, arrival, name, $"import {name}", cancellation));
    }

    /// <summary>Tells what became of files, each with its findings, and counts them.</summary>
    public static void Tell(IReadOnlyList<TakenFile> files, bool json)
    {
        if (json)
        {
            Console.WriteLine(JsonPen.Write(pen => pen.List("files", files, file => file.Write(pen))));
            return;
        }

        foreach (TakenFile file in files)
        {
            file.Tell(file.IsIn ? Console.Out : Console.Error);
        }

        if (files.Count > 1)
        {
            Console.WriteLine($"{files.Count(file => file.IsIn)} of {files.Count} files are in the book.");
        }
    }

    /// <summary>Tells of it in JSON.</summary>
    protected abstract void Write(JsonPen pen);

    /// <summary>Tells of it on lines.</summary>
    protected virtual void Tell(TextWriter to)
    {
        to.WriteLine(CommandLine.OneLine($"{Path}: {InWords}"));
        foreach (Finding finding in Findings)
        {
            to.WriteLine($"  {FindingLines.Line(finding)}");
        }
    }
}
