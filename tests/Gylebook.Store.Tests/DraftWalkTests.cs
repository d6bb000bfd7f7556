using CsCheck;

namespace Gylebook.Store.Tests;

public sealed class DraftWalkTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;
    private Guid _recipe;

    public async ValueTask InitializeAsync() => _book = await _bench.OpenAsync();

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public void Any_walk_of_saves_undos_and_redos_goes_as_on_paper() =>
        Gen.Int[0, 4].Array[1, 25].Sample(walk => WalkAsync(walk).GetAwaiter().GetResult(), iter: 40, threads: 1);

    /// <summary>0 and 1 save, 2 undoes, 3 redoes, 4 saves as one step with the last, where there is one; two lists play the brewer's paper.</summary>
    private async Task WalkAsync(int[] walk)
    {
        _recipe = await _book.Recipes.CreateAsync(Bench.Recipe("Start"), cancellation: Bench.Cancellation);
        var past = new Stack<string>();
        var future = new Stack<string>();
        string now = Bench.Recipe("Start");
        long revision = 1;
        for (int step = 0; step < walk.Length; step++)
        {
            (Stack<string> from, Stack<string> to) = walk[step] == 2 ? (past, future) : (future, past);
            if (walk[step] is < 2 or 4)
            {
                bool isJoined = walk[step] == 4 && past.Count > 0;
                var join = walk[step] == 4 ? new DraftJoin(past.TryPeek(out string? last) ? last : now, "Both") : null;
                if (!isJoined)
                {
                    past.Push(now);
                }

                future.Clear();
                now = Bench.Recipe($"Step {step}");
                Assert.Equal(new DraftSave.Saved(revision + 1, isJoined), await SaveAsync(revision++, $"Step {step}", "Step", join));
            }
            else
            {
                DraftMove move = walk[step] == 2
                    ? await UndoAsync(revision)
                    : await RedoAsync(revision);
                Assert.Equal(from.Count > 0, move is DraftMove.Moved);
                if (from.TryPop(out string? next))
                {
                    to.Push(now);
                    now = next;
                    revision++;
                }
            }

            Draft draft = await DraftAsync();
            Assert.Equal((now, revision), (draft.Document, draft.Revision));
            Assert.Equal((past.Count > 0, future.Count > 0), (draft.UndoLabel is not null, draft.RedoLabel is not null));
        }

        Assert.Equal(walk.Count(step => step is < 2 or 4), (await HistoryAsync()).Count);
    }

    private async Task<Draft> DraftAsync() => (await _book.Drafts.FindAsync(_recipe, Bench.Cancellation))!;

    private Task<List<DraftEdit>> HistoryAsync() => _book.Drafts.HistoryAsync(_recipe, cancellation: Bench.Cancellation);

    private Task<DraftSave> SaveAsync(long seen, string name, string label, DraftJoin? join) =>
        _book.Drafts.SaveAsync(_recipe, seen, Bench.Recipe(name), label, "tab A", join, Bench.Cancellation);

    private Task<DraftMove> UndoAsync(long seen) => _book.Drafts.UndoAsync(_recipe, seen, "tab A", Bench.Cancellation);

    private Task<DraftMove> RedoAsync(long seen) => _book.Drafts.RedoAsync(_recipe, seen, "tab A", Bench.Cancellation);
}
