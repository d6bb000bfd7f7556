using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>What one file of another format brought.</summary>
/// <param name="Id">Which landing.</param>
/// <param name="From">What the file was called.</param>
/// <param name="Puts">What became of each text, in their order.</param>
public sealed record Landing(Guid Id, string From, IReadOnlyList<FilePut> Puts)
{
    /// <summary>What is new in the book.</summary>
    public IEnumerable<KeptFile> Added => Puts.OfType<FilePut.Added>().Select(put => put.File);
}

/// <summary>What became of taking a landing back.</summary>
/// <param name="From">What the file was called.</param>
/// <param name="Gone">Names of what went into the bin.</param>
/// <param name="Stayed">Names of what was changed since, or is gone already, and stays as it is.</param>
public sealed record LandingUndone(string From, IReadOnlyList<string> Gone, IReadOnlyList<string> Stayed);

/// <summary>Files of other formats, each of which may bring several things: they land together and can be taken back together.</summary>
public sealed class BookLandings
{
    private const string Key = "landings";
    private const int MostRemembered = 20;

    private readonly Book _book;
    private readonly BookAccess _access;

    internal BookLandings(Book book, BookAccess access) => (_book, _access) = (book, access);

    /// <summary>Puts texts into the book. Nothing that stands there is changed: a sheet whose id is there is passed over, all else comes beside what has its name.</summary>
    /// <param name="texts">The texts, each whole and of a format of ours.</param>
    /// <param name="from">What the file was called.</param>
    /// <param name="tabId">Who does it.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<Landing> PutAsync(IEnumerable<string> texts, string from, string tabId, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(texts);
        Landing landing = new(Guid.CreateVersion7(_access.Now), from, []);
        List<FilePut> puts = [];
        foreach (string text in texts)
        {
            puts.Add(await PutAsync(text, tabId, cancellation));
            landing = landing with { Puts = [.. puts] };
            // As it goes: what is in the book can be taken back, wherever the rest stops.
            await RememberAsync(landing, cancellation);
        }

        return landing;
    }

    /// <summary>Takes back what a file brought, all at once: it goes into the bin. What was changed since stays.</summary>
    /// <param name="id">Which landing; null for the last.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>What went and what stayed; null when the book remembers no such landing.</returns>
    public async Task<LandingUndone?> UndoAsync(Guid? id = null, CancellationToken cancellation = default)
    {
        List<BookChange> changes = [];
        LandingUndone? undone = await _access.WriteAsync(
            async context =>
            {
                List<Remembered> all = Read((await context.Settings.FindAsync([Key], cancellation))?.Value);
                if (all.Find(landing => id is null || landing.Id == id) is not { } landing)
                {
                    return null;
                }

                List<string> gone = [], stayed = [];
                foreach ((string kind, Guid item) in landing.Items)
                {
                    (bool isGone, string name) = await BinAsync(context, kind, item, changes, cancellation);
                    (isGone ? gone : stayed).Add($"{kind} \"{name}\"");
                }

                all.Remove(landing);
                await BookSettings.SetAsync(context, Key, Write(all), _access.Now, cancellation);
                return new LandingUndone(landing.From, gone, stayed);
            },
            cancellation);
        changes.ForEach(_access.Changes.Tell);
        return undone;
    }

    private async Task<FilePut> PutAsync(string text, string tabId, CancellationToken cancellation)
    {
        FilePut put = await _book.Files.PutAsync(text, new ClashAnswer.Ask(), tabId, cancellation);
        if (put is not FilePut.Clash clash)
        {
            return put;
        }

        string? id = DocumentText.IdIn(text, DocumentText.Kept);
        if (id is null)
        {
            return await _book.Files.PutAsync(text, new ClashAnswer.KeepBoth(), tabId, cancellation);
        }

        // Recipes of the same file call a sheet by its id, so that one must stay what it is.
        return clash.Standing.Any(file => file.CalledBy == id)
            ? put
            : await _book.Files.PutAsync(await RenamedAsync(text, cancellation), new ClashAnswer.Ask(), tabId, cancellation);
    }

    private async Task<string> RenamedAsync(string text, CancellationToken cancellation)
    {
        string name = DocumentText.NameIn(text, DocumentText.Kept);
        for (int number = 2; ; number++)
        {
            string free = FormattableString.Invariant($"{name} {number}");
            if ((await _book.Files.FindAsync(free, cancellation: cancellation)).Count == 0)
            {
                return DocumentText.WithName(text, DocumentText.Kept, free);
            }
        }
    }

    private async Task<(bool IsGone, string Name)> BinAsync(BookContext context, string kind, Guid id, List<BookChange> changes, CancellationToken cancellation)
    {
        if (kind == "recipe")
        {
            RecipeRow? recipe = await context.Recipes.Include(row => row.Draft).SingleOrDefaultAsync(row => row.Id == id, cancellation);
            bool isOurs = recipe is { DeletedTicks: null, Draft.Revision: 1 } && !await context.Gyles.AnyAsync(gyle => gyle.RecipeId == id && gyle.DeletedTicks == null, cancellation);
            if (isOurs)
            {
                recipe!.DeletedTicks = _access.Now;
                changes.Add(new BookChange(BookNoun.Recipe, id, 1, null));
            }

            return (isOurs, recipe?.Name ?? "");
        }

        (SheetRow? sheet, BookNoun noun) = kind switch
        {
            "kit" => ((SheetRow?)await context.Kits.FindAsync([id], cancellation), BookNoun.Kit),
            "water" => (await context.Waters.FindAsync([id], cancellation), BookNoun.Water),
            "food" => (await context.Foods.FindAsync([id], cancellation), BookNoun.Food),
            _ => (await context.LarderSheets.FindAsync([id], cancellation), BookNoun.Larder),
        };
        bool isAsLanded = sheet is { DeletedTicks: null, Revision: 1 };
        if (isAsLanded)
        {
            sheet!.DeletedTicks = _access.Now;
            changes.Add(new BookChange(noun, id, 1, null));
        }

        return (isAsLanded, sheet?.Name ?? "");
    }

    private async Task RememberAsync(Landing landing, CancellationToken cancellation) => await _access.WriteAsync(
        async context =>
        {
            List<Remembered> all = Read((await context.Settings.FindAsync([Key], cancellation))?.Value);
            all.RemoveAll(other => other.Id == landing.Id);
            if (landing.Added.Any())
            {
                all.Insert(0, new Remembered(landing.Id, landing.From.Replace('\t', ' ').Replace('\n', ' '), [.. landing.Added.Select(file => (file.Kind, file.Id))]));
            }

            await BookSettings.SetAsync(context, Key, Write(all.Take(MostRemembered)), _access.Now, cancellation);
            return true;
        },
        cancellation);

    private static List<Remembered> Read(string? text)
    {
        List<Remembered> all = [];
        foreach (string[] line in (text ?? "").Split('\n').Select(line => line.Split('\t')))
        {
            if (line.Length >= 2 && Guid.TryParse(line[0], out Guid id))
            {
                all.Add(new Remembered(id, line[1], [.. line.Skip(2).Select(item => item.Split(' ')).Where(item => item.Length == 2).Select(item => (item[0], Guid.Parse(item[1])))]));
            }
        }

        return all;
    }

    private static string Write(IEnumerable<Remembered> all) =>
        string.Join('\n', all.Select(landing => string.Join('\t', [landing.Id.ToString(), landing.From, .. landing.Items.Select(item => $"{item.Kind} {item.Id}")])));

    private sealed record Remembered(Guid Id, string From, IReadOnlyList<(string Kind, Guid Id)> Items);
}
