using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>What the book knows of its demo.</summary>
public enum DemoState
{
    /// <summary>Never put in: a new book.</summary>
    NotYet,

    /// <summary>In the book.</summary>
    Here,

    /// <summary>Removed by the brewer, for good.</summary>
    Removed,
}

/// <summary>The demo in the book: invented recipes and gyles that the brewer may send away.</summary>
public sealed class BookDemo
{
    private const string Key = "demo";

    private readonly BookAccess _access;

    internal BookDemo(BookAccess access) => _access = access;

    /// <summary>Whether the demo is still to come, here, or sent away.</summary>
    public Task<DemoState> StateAsync(CancellationToken cancellation = default) =>
        _access.ReadAsync(
            async context => await context.Settings.FindAsync([Key], cancellation) is { } setting
                ? Enum.Parse<DemoState>(setting.Value)
                : DemoState.NotYet,
            cancellation);

    /// <summary>Remembers that the demo was put in, so that the next start does not do it again.</summary>
    /// <returns>False when it had been put in or sent away before; nothing is written then.</returns>
    public Task<bool> MarkHereAsync(CancellationToken cancellation = default) =>
        _access.WriteAsync(
            async context =>
            {
                bool isNew = await context.Settings.FindAsync([Key], cancellation) is null;
                if (isNew)
                {
                    await BookSettings.SetAsync(context, Key, nameof(DemoState.Here), _access.Now, cancellation);
                }

                return isNew;
            },
            cancellation);

    /// <summary>Puts everything of the demo into the bin and remembers that it is not wanted, all in one go.</summary>
    public async Task RemoveAsync(CancellationToken cancellation = default)
    {
        List<BookChange> gone = await _access.WriteAsync(
            async context =>
            {
                var changes = new List<BookChange>();
                foreach (RecipeRow recipe in await context.Recipes.Include(r => r.Draft)
                    .Where(r => r.IsDemo && r.DeletedTicks == null).ToListAsync(cancellation))
                {
                    recipe.DeletedTicks = _access.Now;
                    changes.Add(new BookChange(BookNoun.Recipe, recipe.Id, recipe.Draft!.Revision, null));
                }

                foreach (GyleRow gyle in await context.Gyles
                    .Where(g => g.IsDemo && g.DeletedTicks == null).ToListAsync(cancellation))
                {
                    gyle.DeletedTicks = _access.Now;
                    changes.Add(new BookChange(BookNoun.Gyle, gyle.Id, 0, null));
                }

                await BinAsync(context.Kits, BookNoun.Kit, changes, cancellation);
                await BinAsync(context.Foods, BookNoun.Food, changes, cancellation);
                await BinAsync(context.Waters, BookNoun.Water, changes, cancellation);
                await BinAsync(context.LarderSheets, BookNoun.Larder, changes, cancellation);
                await BookSettings.SetAsync(context, Key, nameof(DemoState.Removed), _access.Now, cancellation);
                return changes;
            },
            cancellation);
        gone.ForEach(_access.Changes.Tell);
    }

    private async Task BinAsync<TRow>(
        DbSet<TRow> rows, BookNoun noun, List<BookChange> changes, CancellationToken cancellation)
        where TRow : SheetRow
    {
        foreach (TRow sheet in await rows.Where(s => s.IsDemo && s.DeletedTicks == null).ToListAsync(cancellation))
        {
            sheet.DeletedTicks = _access.Now;
            changes.Add(new BookChange(noun, sheet.Id, sheet.Revision, null));
        }
    }
}
