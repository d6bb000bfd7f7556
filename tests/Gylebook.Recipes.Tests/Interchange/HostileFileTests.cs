using Gylebook.Recipes.Forms;
using System.Diagnostics;
using System.Text;
using CsCheck;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Tests.Interchange;

/// <summary>Files that are broken, huge or meant to hurt: a finding each, never an exception.</summary>
public sealed class HostileFileTests
{
    private static readonly string Good = Samples.Text("samples", "recipes", "plain-bitter.json");

    [Theory]
    [InlineData("[")]
    [InlineData("{\"a\":")]
    public void Ten_thousand_levels_are_refused_and_overflow_no_stack(string level)
    {
        var finding = Only(RecipeFile.Read(string.Concat(Enumerable.Repeat(level, 10_000))));
        Assert.Equal("file.depth", finding.Code);
        Assert.Contains("64", finding.Message, StringComparison.Ordinal);
        Assert.Equal("64", finding.Limit);
    }

    [Theory]
    [InlineData(63, "json.kind")]
    [InlineData(64, "file.depth")]
    public void Sixty_four_levels_are_the_limit(int lists, string code) =>
        Assert.Equal(code, Only(RecipeFile.Read(Good.Replace("\"No foods at all: the control.\"", new string('[', lists) + new string(']', lists), StringComparison.Ordinal))).Code);

    [Fact]
    public void A_file_over_fifty_megabytes_is_refused_before_it_is_read()
    {
        using var stream = new EndlessStream(50_000_001);
        var finding = Only(RecipeFile.Read(stream));
        Assert.Equal(("file.large", "50 MB"), (finding.Code, finding.Limit));
        Assert.Equal(0, stream.BytesRead);
        Assert.Equal("file.large", Only(RecipeFile.Read(new string(' ', 50_000_001))).Code);
        Assert.Equal("file.large", Only(RecipeFile.Read(new byte[50_000_001].AsMemory())).Code);
    }

    [Fact]
    public void A_stream_of_unknown_length_is_read_no_further_than_the_limit()
    {
        using var stream = new EndlessStream(null);
        Assert.Equal("file.large", Only(RecipeFile.Read(stream)).Code);
        Assert.InRange(stream.BytesRead, 50_000_001, 50_200_000);
    }

    [Theory]
    [InlineData("", "line 1, column 1:")]
    [InlineData("{\n  \"name\": \"é°C\", NaN }", "line 2, column 18:")]
    [InlineData("{ \"name\": Infinity }", "line 1, column 11:")]
    [InlineData("{ \"a\": 1 } x", "line 1, column 12:")]
    [InlineData("{ 'a': 1 }", "line 1, column 3:")]
    [InlineData("{ \"a\": 1 // one\n}", "line 1, column 10:")]
    public void Broken_json_gives_line_and_column(string text, string place)
    {
        var finding = Only(RecipeFile.Read(text));
        Assert.Equal("file.json", finding.Code);
        Assert.StartsWith(place, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Bytes_that_are_not_utf8_give_line_and_column()
    {
        byte[] bytes = [.. "{\n  \"na"u8, 0xE9, .. "me\": 1 }"u8];
        var finding = Only(RecipeFile.Read(bytes.AsMemory()));
        Assert.Equal(("file.encoding", "byte 0xE9"), (finding.Code, finding.Value));
        Assert.StartsWith("line 2, column 6:", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\\ud800")]
    [InlineData("\\udc00x")]
    public void Half_a_character_pair_is_refused(string half) =>
        Assert.Equal("file.encoding", Only(RecipeFile.Read($"{{ \"name\": \"{half}\" }}")).Code);

    [Fact]
    public void Half_a_character_pair_in_a_text_in_memory_is_refused() =>
        Assert.Equal("file.encoding", Only(RecipeFile.Read($"{{ \"name\": \"{(char)0xD800}\" }}")).Code);

    [Theory]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("7")]
    [InlineData("\"gylebook-recipe/1\"")]
    public void A_file_that_is_no_object_says_so(string text) =>
        Assert.Equal("json.kind", Only(RecipeFile.Read(text)).Code);

    [Fact]
    public void A_flood_of_findings_ends_where_nobody_would_read_on()
    {
        var keys = string.Join(", ", Enumerable.Range(0, 20_000).Select(i => $"\"key{i}\": 1"));
        var clock = Stopwatch.StartNew();
        var findings = RecipeFile.Read($"{{ \"format\": \"gylebook-recipe/1\", {keys} }}").Findings;
        Assert.Equal(1001, findings.Count);
        Assert.Equal("file.more", findings[^1].Code);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(10), $"{clock.Elapsed}");
    }

    [Fact]
    public void A_huge_text_is_quoted_short()
    {
        var findings = RecipeFile.Read(Good.Replace("45 g", new string('9', 1_000_000), StringComparison.Ordinal)).Findings;
        Assert.All(findings, finding => Assert.True(finding.Message.Length < 400 && (finding.Value?.Length ?? 0) < 80));
        Assert.Equal("ingredients[2].amount", Assert.Single(findings).Where);
    }

    [Fact]
    public void A_name_in_several_lines_is_refused() =>
        Assert.Equal("text.empty", Only(RecipeFile.Read(Good.Replace("Plain Bitter", "Plain\\nBitter", StringComparison.Ordinal))).Code);

    [Fact]
    public void No_damage_to_a_good_file_makes_an_exception()
    {
        var good = Encoding.UTF8.GetBytes(Good);
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte, Gen.Int[0, 3]).List[1, 6].Sample(
            wounds =>
            {
                var bytes = new List<byte>(good);
                foreach (var (at, value, what) in wounds)
                {
                    var place = Math.Min(at, bytes.Count - 1);
                    if (what == 0)
                    {
                        bytes.RemoveAt(place);
                    }
                    else if (what == 1)
                    {
                        bytes.Insert(place, value);
                    }
                    else
                    {
                        bytes[place] = value;
                    }
                }

                var reading = RecipeFile.Read(bytes.ToArray().AsMemory());
                Assert.Equal(reading.Value is null, reading.Findings.Any(finding => finding.Severity == Severity.Error));
            },
            iter: 5000);
    }

    private static Finding Only(Reading<Recipe> reading)
    {
        Assert.Null(reading.Value);
        return Assert.Single(reading.Findings);
    }

    /// <summary>Spaces without end, of a stated length or none.</summary>
    private sealed class EndlessStream(long? length) : Stream
    {
        public long BytesRead { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => length is not null;

        public override bool CanWrite => false;

        public override long Length => length ?? throw new NotSupportedException();

        public override long Position { get => BytesRead; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            buffer.AsSpan(offset, count).Fill((byte)' ');
            BytesRead += count;
            return count;
        }

        public override void Flush() => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
