using System.Text.RegularExpressions;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>What README and the guides tell to type does what they say: each command runs, page by page, in its order.</summary>
public sealed partial class DocumentedCommandTests : IDisposable
{
    private readonly string _home = Directory.CreateTempSubdirectory("gylebook-docs-").FullName;

    public static TheoryData<string> Pages() =>
        [.. Directory.EnumerateFiles(RepositoryFile.PathOf("docs/guide"), "*.md").Select(path => "docs/guide/" + Path.GetFileName(path)).Append("README.md").Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_command_of_a_page_runs(string page)
    {
        LayOut();
        foreach (string command in CommandsOf(page))
        {
            Ran ran = GylebookProgram.Run(Arguments().Matches(command).Select(part => part.Groups["quoted"].Success ? part.Groups["quoted"].Value : part.Value).Skip(1), home: _home);
            Assert.True(ran.ExitCode == 0, $"{page}: {command}\n{ran.Output}\n{ran.Errors}");
        }
    }

    [Fact]
    public void Commands_are_found_and_start_as_they_can_be_typed_in_a_clone()
    {
        Assert.True(Pages().Sum(page => CommandsOf(page.Data).Count()) > 12);
        Assert.DoesNotContain(Pages().SelectMany(page => Blocks(page.Data)), line => line.TrimStart().StartsWith("gylebook ", StringComparison.Ordinal));
    }

    public void Dispose() => Directory.Delete(_home, recursive: true);

    // What the pages call the reader's own files lies there, and the samples lie where they do in a clone.
    private void LayOut()
    {
        foreach (string path in Directory.EnumerateFiles(RepositoryFile.PathOf("samples"), "*.json", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(_home, "samples", Path.GetRelativePath(RepositoryFile.PathOf("samples"), path));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(path, copy);
        }

        Directory.CreateDirectory(Path.Combine(_home, "foods"));
        Directory.CreateDirectory(Path.Combine(_home, "gylebook"));
        File.Copy(RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json"), Path.Combine(_home, "foods/pumpkin-seed-flour.json"));
        File.Copy(RepositoryFile.PathOf("samples/recipes/hedgerow-brown.json"), Path.Combine(_home, "my-beer.json"));
        File.Copy(RepositoryFile.PathOf("samples/kits/big-pot.json"), Path.Combine(_home, "my-kit.json"));
        File.Copy(RepositoryFile.PathOf("samples/water/hard-well.json"), Path.Combine(_home, "my-water.json"));
        RestoredBook.CopyTo(Path.Combine(_home, "gylebook/book.sqlite"));
    }

    // Without a verb the program stays open: what it does then is tested where pages are.
    private static IEnumerable<string> CommandsOf(string page) =>
        Blocks(page).Select(line => line.Trim()).Where(line => line.StartsWith("./gylebook ", StringComparison.Ordinal));

    private static IEnumerable<string> Blocks(string page)
    {
        bool isFenced = false;
        foreach (string line in File.ReadLines(RepositoryFile.PathOf(page)))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                isFenced = !isFenced;
            }
            else if (isFenced || line.StartsWith("    ", StringComparison.Ordinal))
            {
                yield return line;
            }
        }
    }

    [GeneratedRegex("\"(?<quoted>[^\"]*)\"|\\S+")]
    private static partial Regex Arguments();
}
