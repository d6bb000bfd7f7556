namespace Gylebook.Store;

/// <summary>Files in and out of the book: a text enters and leaves letter for letter, and none is overwritten unasked.</summary>
/// <remarks>Whether a text can be read is for the reader of its format to say, before it comes here.</remarks>
public sealed class BookFiles
{
    private const string Prefix = "gylebook-";

    private readonly Book _book;

    internal BookFiles(Book book) => _book = book;

    /// <summary>What there can be, in a word each: <c>recipe</c>, <c>kit</c>, …</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. DocumentText.Kept.Select(KindOfFormat)];

    /// <summary>What stands in the book under a name, whatever its case and accents, under the id recipes call it by, or under the number the book gave it.</summary>
    /// <param name="called">The name, id or number.</param>
    /// <param name="kind">Which kind alone; null for all.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<IReadOnlyList<KeptFile>> FindAsync(string called, string? kind = null, CancellationToken cancellation = default)
    {
        string folded = NameSearch.Fold(called);
        List<KeptFile> found = [];
        foreach (string each in Kinds.Where(each => kind is null || kind == each))
        {
            if (Guid.TryParse(called, out Guid number) && await FindAsync(each, number, cancellation) is { } one)
            {
                return [one];
            }

            // Only an id need not be like the name.
            found.AddRange((await AllAsync(each, IsCalledById(each) ? "" : called, cancellation))
                .Where(file => NameSearch.Fold(file.Name) == folded || file.CalledBy == called));
        }

        return found;
    }

    /// <summary>One of them, in the bin or not; null when there is none of that kind.</summary>
    /// <param name="kind">Which kind.</param>
    /// <param name="id">Which one.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<KeptFile?> FindAsync(string kind, Guid id, CancellationToken cancellation = default)
    {
        if (kind == "recipe")
        {
            return await _book.Recipes.FindAsync(id, cancellation) is { } line ? await RecipeAsync(line, cancellation) : null;
        }

        Sheet? sheet = kind switch
        {
            "kit" => await _book.Kits.FindAsync(id, cancellation),
            "water" => await _book.Waters.FindAsync(id, cancellation),
            "food" => await _book.Foods.FindAsync(id, cancellation),
            _ => await _book.Larder.FindAsync(id, cancellation),
        };
        return sheet is null ? null : OfKind(kind, [sheet]).SingleOrDefault();
    }

    /// <summary>Puts a text into the book.</summary>
    /// <param name="text">The whole text: JSON of one of our formats, with a name in it.</param>
    /// <param name="answer">What to do when its name or id is there already.</param>
    /// <param name="tabId">Who does it.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <exception cref="ArgumentException">Not JSON, of no format of ours, or without a name: the caller's bug.</exception>
    public async Task<FilePut> PutAsync(string text, ClashAnswer answer, string tabId, CancellationToken cancellation = default)
    {
        string kind = KindIn(text);
        string name = answer is ClashAnswer.Called { Name: var wanted } ? wanted.Trim() : DocumentText.NameIn(text, DocumentText.Kept);
        IReadOnlyList<KeptFile> all = await AllAsync(kind, IsCalledById(kind) ? "" : name, cancellation);
        string entering = answer is ClashAnswer.Called ? Called(text, name, all) : text;
        List<KeptFile> standing = [.. all.Where(file => IsSameAs(entering, file))];
        return (standing, answer) switch
        {
            ([], _) => new FilePut.Added(await AddAsync(kind, entering, cancellation)),
            (_, ClashAnswer.KeepBoth) => new FilePut.Added(await AddAsync(kind, Beside(entering, all), cancellation)),
            _ when standing.Find(file => file.Text == entering && !file.IsDamaged) is { } same => new FilePut.Unchanged(same),
            (_, ClashAnswer.Replace) when TheOneOf(entering, standing) is { } one => await ReplaceAsync(one, entering, tabId, cancellation),
            _ => new FilePut.Clash(standing),
        };
    }

    private static string KindOfFormat(string format) => format[Prefix.Length..].TrimEnd('/');

    private static string KindIn(string text) => KindOfFormat(DocumentText.FormatOf(text, DocumentText.Kept));

    private static bool IsCalledById(string kind) => kind is not ("recipe" or "kit" or "water");

    private static bool IsSameAs(string text, KeptFile file) =>
        NameSearch.Fold(DocumentText.NameIn(text, DocumentText.Kept)) == NameSearch.Fold(file.Name) || HasIdOf(text, file);

    private static bool HasIdOf(string text, KeptFile file) =>
        file.CalledBy is not null && file.CalledBy == DocumentText.IdIn(text, DocumentText.Kept);

    /// <summary>The one that a text is to take the place of: recipes call it by its id, so that goes first; null when it may be several.</summary>
    private static KeptFile? TheOneOf(string text, List<KeptFile> standing) =>
        standing.FindAll(file => HasIdOf(text, file)) is [{ } called] ? called : standing is [{ } only] ? only : null;

    /// <summary>A text under another name, and under an id made of it.</summary>
    private static string Called(string text, string name, IReadOnlyList<KeptFile> others)
    {
        string named = DocumentText.WithName(text, DocumentText.Kept, name);
        return DocumentText.IdIn(named, DocumentText.Kept) is null ? named : WithFreeId(named, name, others);
    }

    /// <summary>A text under the next name and id that nobody has.</summary>
    private static string Beside(string text, IReadOnlyList<KeptFile> others)
    {
        string name = FreeName.Of(DocumentText.NameIn(text, DocumentText.Kept), others.Select(file => file.Name));
        string named = DocumentText.WithName(text, DocumentText.Kept, name);
        return DocumentText.IdIn(named, DocumentText.Kept) is { } id ? WithFreeId(named, id, others) : named;
    }

    private static string WithFreeId(string text, string wanted, IReadOnlyList<KeptFile> others) => DocumentText.WithId(
        text, DocumentText.Kept, FreeId.Of(wanted, KindIn(text), id => others.Any(file => file.CalledBy == id)));

    private async Task<FilePut> ReplaceAsync(KeptFile file, string text, string tabId, CancellationToken cancellation)
    {
        if (file.IsDamaged)
        {
            return new FilePut.Refused($"{file} is damaged, and what it said would be kept as sound; put its text right first");
        }

        DraftSave answer = await DraftsOf(file.Kind).SaveAsync(file.Id, file.Revision, text, "replaced by a file", tabId, cancellation);
        return answer is DraftSave.Saved { Revision: var revision }
            ? new FilePut.Replaced(file with { Text = text, Name = DocumentText.NameIn(text, DocumentText.Kept), CalledBy = DocumentText.IdIn(text, DocumentText.Kept), Revision = revision })
            : new FilePut.Refused($"{file} was changed meanwhile; try again");
    }

    private async Task<KeptFile> AddAsync(string kind, string text, CancellationToken cancellation)
    {
        Guid id = kind switch
        {
            "recipe" => await _book.Recipes.CreateAsync(text, cancellation: cancellation),
            "kit" => await _book.Kits.CreateAsync(text, cancellation: cancellation),
            "water" => await _book.Waters.CreateAsync(text, cancellation: cancellation),
            "food" => await _book.Foods.CreateAsync(text, cancellation: cancellation),
            _ => await _book.Larder.CreateAsync(text, cancellation: cancellation),
        };
        return new KeptFile(kind, id, DocumentText.NameIn(text, DocumentText.Kept), DocumentText.IdIn(text, DocumentText.Kept), text, 1, false);
    }

    private BookDrafts DraftsOf(string kind) => kind switch
    {
        "recipe" => _book.Drafts,
        "kit" => _book.Kits.Drafts,
        "water" => _book.Waters.Drafts,
        "food" => _book.Foods.Drafts,
        _ => _book.Larder.Drafts,
    };

    /// <summary>All of a kind that stand in the book and whose name has that in it.</summary>
    private async Task<IReadOnlyList<KeptFile>> AllAsync(string kind, string search, CancellationToken cancellation) => kind switch
    {
        "recipe" => await RecipesAsync(search, cancellation),
        "kit" => Files(kind, await _book.Kits.ListAsync(search, cancellation)),
        "water" => Files(kind, await _book.Waters.ListAsync(search, cancellation)),
        "food" => Files(kind, await _book.Foods.ListAsync(search, cancellation)),
        _ => OfKind(kind, await _book.Larder.ListAsync(search, cancellation)),
    };

    private async Task<IReadOnlyList<KeptFile>> RecipesAsync(string search, CancellationToken cancellation)
    {
        List<KeptFile> found = [];
        foreach (RecipeLine line in await _book.Recipes.ListAsync(search, cancellation))
        {
            if (await RecipeAsync(line, cancellation) is { } recipe)
            {
                found.Add(recipe);
            }
        }

        return found;
    }

    private async Task<KeptFile?> RecipeAsync(RecipeLine line, CancellationToken cancellation) =>
        await _book.Drafts.FindAsync(line.Id, cancellation) is { } draft
            ? new KeptFile("recipe", line.Id, line.Name, null, draft.Document, draft.Revision, draft.IsDamaged)
            : null;

    /// <summary>Those of the sheets that are of that kind: the larder holds four.</summary>
    private static IReadOnlyList<KeptFile> OfKind(string kind, List<Sheet> sheets) => [.. Files(kind, sheets).Where(file => Heading(() => KindIn(file.Text)) == kind)];

    private static List<KeptFile> Files(string kind, List<Sheet> sheets) => sheets.ConvertAll(sheet =>
        new KeptFile(kind, sheet.Id, sheet.Name, IsCalledById(kind) ? Heading(() => DocumentText.IdIn(sheet.Document, DocumentText.Kept)) : null, sheet.Document, sheet.Revision, sheet.IsDamaged));

    /// <summary>What a text's heading says; null where the disk has changed it so that it has none.</summary>
    private static string? Heading(Func<string?> read)
    {
        try
        {
            return read();
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
