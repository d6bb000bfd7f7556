using System.Globalization;
using BenchmarkDotNet.Attributes;
using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace Gylebook.Benchmarks;

/// <summary>The edit log of one recipe, in which amounts are typed over: what an edit takes on disk, and in time.</summary>
/// <remarks>Says the bytes an edit before it measures; target: a tenth of the 4,200 that two whole texts took, for twenty lines.</remarks>
public class LogBenchmarks
{
    private const int Edits = 400;

    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-bench-").FullName;
    private Book _book = null!;
    private Guid _recipe;
    private long _revision;
    private string _text = "";

    /// <summary>Lines of the recipe.</summary>
    [Params(20, 200)]
    public int Lines { get; set; }

    private string File => Path.Combine(_folder, "book.sqlite");

    /// <summary>Types the edits.</summary>
    [GlobalSetup]
    public async Task PrepareAsync()
    {
        _book = await SqliteBook.OpenAsync(File, TimeProvider.System);
        _text = TwentyIngredients.Times(Lines / 20);
        _recipe = await _book.Recipes.CreateAsync(_text);
        long before = Bytes();
        var chance = new Random(20261129);
        _revision = 1;
        while (_revision <= Edits)
        {
            // What is typed may be what stood there, which is no edit.
            _text = Typed(_text, chance);
            DraftSave answer = await _book.Drafts.SaveAsync(
                _recipe, _revision, _text, "pale ale malt, amount: 3 kg → 4 kg", "0195955e-0000-7000-8000-000000000001");
            _revision = ((DraftSave.Saved)answer).Revision;
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"// {Lines} lines, {_text.Length} letters: {(Bytes() - before) / (double)Edits:0} bytes an edit"));
    }

    /// <summary>Takes the book away.</summary>
    [GlobalCleanup]
    public async Task CloseAsync()
    {
        await _book.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>The last edit, with its texts.</summary>
    [Benchmark]
    public Task<List<DraftEdit>> ReadOne() => _book.Drafts.HistoryAsync(_recipe, 1);

    /// <summary>As the history panel asks.</summary>
    [Benchmark]
    public Task<List<DraftEdit>> ReadTwoHundred() => _book.Drafts.HistoryAsync(_recipe);

    /// <summary>Undo and redo, both on disk.</summary>
    [Benchmark]
    public async Task<DraftMove> UndoAndRedo()
    {
        await _book.Drafts.UndoAsync(_recipe, _revision++, "bench");
        return await _book.Drafts.RedoAsync(_recipe, _revision++, "bench");
    }

    private static string Typed(string text, Random chance)
    {
        const string Amount = "\"amount\": \"";
        int at = text.IndexOf(Amount, chance.Next(text.Length / 4, text.LastIndexOf(Amount, StringComparison.Ordinal)), StringComparison.Ordinal) + Amount.Length;
        return text[..at] + chance.Next(1, 999).ToString(CultureInfo.InvariantCulture) + text[text.IndexOf(' ', at)..];
    }

    /// <summary>Of the book, once its empty room is given back.</summary>
    private long Bytes()
    {
        using var connection = new SqliteConnection($"Data Source={File};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "VACUUM; SELECT page_count * page_size FROM pragma_page_count(), pragma_page_size()";
        return (long)command.ExecuteScalar()!;
    }
}
