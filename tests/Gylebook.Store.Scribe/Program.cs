using System.Globalization;
using Gylebook.Store;
using Gylebook.Store.Sqlite;

// Edits one recipe for ever and says, line by line, which revisions the book has acknowledged.
// The tests start this program and kill it in the middle of its work.
await using Book book = await SqliteBook.OpenAsync(args[0], TimeProvider.System);
var recipe = Guid.Parse(args[1]);
Draft draft = (await book.Drafts.FindAsync(recipe))!;
long revision = draft.Revision;
(string now, string began) = (draft.Document, draft.Document);
while (true)
{
    string next = (revision + 1).ToString(CultureInfo.InvariantCulture);
    string document = $$"""{ "format": "gylebook-recipe/1", "name": "Revision {{next}}" }""";

    // Every third is one step with the edit before it, as after a pause in mid-word.
    DraftJoin? join = revision % 3 == 0 ? new DraftJoin(began, "Edit " + next) : null;
    var saved = (DraftSave.Saved)await book.Drafts.SaveAsync(recipe, revision, document, "Edit " + next, "scribe", join);
    (now, began) = (document, saved.IsJoined ? began : now);
    revision = saved.Revision;
    Console.Out.WriteLine(revision);
    Console.Out.Flush();
}
