using System.Diagnostics;
using System.Text;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.Arrivals;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;

namespace Gylebook.Recipes.Tests.Interchange.OpenFormats;

/// <summary>Files that are broken, huge, in other letters or meant to harm.</summary>
public sealed class HostileOpenFileTests
{
    private const string Head = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    [Theory]
    [InlineData("{ \"beerjson\": ", "file.json", "")]
    [InlineData("{ \"beerjson\": 3 }", "beerjson.root", "")]
    [InlineData("{ \"beerjson\": {}, \"more\": 1 }", "beerjson.root", "")]
    [InlineData("{ \"beerjson\": { \"recipes\": [ { \"name\": \"a\", \"name\": \"b\" } ] } }", "key.duplicate", "recipes[0].name")]
    [InlineData("<RECIPES><RECIPE>", "file.xml", "")]
    [InlineData("<html><body>beer</body></html>", "beerxml.root", "")]
    [InlineData("<!DOCTYPE RECIPES [ <!ENTITY lol \"lol\"> <!ENTITY lol2 \"&lol;&lol;\"> ]><RECIPES><RECIPE><NAME>&lol2;</NAME></RECIPE></RECIPES>", "xml.documentType", "")]
    [InlineData("<!DOCTYPE RECIPES [ <!ENTITY x SYSTEM \"file:///etc/passwd\"> ]><RECIPES><RECIPE><NAME>&x;</NAME></RECIPE></RECIPES>", "xml.documentType", "")]
    public void What_cannot_be_read_is_one_finding_and_no_file(string text, string code, string where)
    {
        Arrival arrival = Read(text);
        Assert.False(arrival.IsRead);
        Assert.Empty(arrival.Files);
        Finding finding = Assert.Single(arrival.Findings);
        Assert.Equal((code, where), (finding.Code, finding.Where));
    }

    [Fact]
    public void Too_deep_too_large_and_too_many_are_told_with_the_limit()
    {
        string deep = $"<RECIPES>{string.Concat(Enumerable.Repeat("<RECIPE>", 100))}{string.Concat(Enumerable.Repeat("</RECIPE>", 100))}</RECIPES>";
        Assert.Equal("file.depth", Read(deep).Findings[0].Code);
        Assert.Equal("file.depth", Read($"{{ \"beerjson\": {string.Concat(Enumerable.Repeat("{\"a\":", 100))}1{new string('}', 101)}").Findings[0].Code);
        byte[] large = new byte[FileInHand.MostBytes + 1];
        Array.Fill(large, (byte)' ');
        large[0] = (byte)'<';
        Assert.Equal("file.large", OpenFile.Read(large)!.Findings[0].Code);

        Arrival many = Read($"<HOPS>{string.Concat(Enumerable.Range(0, 1200).Select(i => $"<HOP><NAME>Hop {i}</NAME><ALPHA>5</ALPHA></HOP>"))}</HOPS>");
        Assert.Equal(1000, many.Files.Count);
        Assert.Contains(many.Travels, travel => travel is { Kind: TravelKind.Left, Where: "HOPS" } && travel.Words.StartsWith("200 of 1200 items", StringComparison.Ordinal));
    }

    /// <summary>Names that no table knows are looked for nearby: many of them must not take minutes.</summary>
    [Fact]
    public void Many_unknown_names_take_no_minutes()
    {
        string names = string.Concat(Enumerable.Range(0, 900).Select(i => $"<MISC><NAME>{new string((char)('a' + (i % 26)), 190)} {i}</NAME><TYPE>Spice</TYPE></MISC>"));
        TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
        Assert.Equal(900, Read($"<MISCS>{names}</MISCS>").Files.Count);
        Assert.True(Process.GetCurrentProcess().TotalProcessorTime - before < TimeSpan.FromSeconds(30));
    }

    public static TheoryData<string, byte[], string> Letters() => new()
    {
        { "UTF-8 with a mark", [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Named("UTF-8"))], "" },
        { "UTF-8", Encoding.UTF8.GetBytes(Named("UTF-8")), "" },
        { "says ISO-8859-1, is UTF-8", Encoding.UTF8.GetBytes(Named("ISO-8859-1")), "read as UTF-8" },
        { "says UTF-8, is Windows-1252", Encoding.Latin1.GetBytes(Named("UTF-8")), "read as Windows-1252" },
        { "ISO-8859-1", Encoding.Latin1.GetBytes(Named("ISO-8859-1")), "" },
        { "UTF-16", [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(Named("UTF-16"))], "" },
    };

    [Theory]
    [MemberData(nameof(Letters))]
    public void Letters_are_read_whatever_the_header_says(string sort, byte[] bytes, string told)
    {
        Arrival arrival = OpenFile.Read(bytes)!;
        Assert.True(arrival.IsRead, sort);
        Assert.Equal("Prüfbräu", Recipe(arrival).Name);
        string[] repaired = [.. arrival.Travels.Where(travel => travel is { Kind: TravelKind.Repaired, Where: "" }).Select(travel => travel.Words)];
        Assert.Equal(told.Length > 0 ? 1 : 0, repaired.Length);
        Assert.All(repaired, words => Assert.Contains(told, words, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("<NAME>Salt & Sour</NAME>", "Salt & Sour", "bare \"&\"")]
    [InlineData("<NAME>Salt &nbsp;</NAME>", "Salt &nbsp;", "bare \"&\"")]
    [InlineData("<NAME>Salt &amp;amp; Sour</NAME>", "Salt & Sour", "escaped twice")]
    [InlineData("<NAME>Be\u0002er</NAME>", "Beer", "characters that XML has not")]
    [InlineData("<NAME>Be&#2;er</NAME>", "Beer", "mended")]
    [InlineData("<name>Small</name>", "Small", "small letters")]
    [InlineData("<NAME>One</NAME></RECIPE></RECIPES><HOPS></HOPS><RECIPES><RECIPE><NAME>Two</NAME>", "One", "mended")]
    [InlineData("<NAME>A <b>bold</b> beer</NAME>", "A bold beer", "markup")]
    public void What_is_broken_is_mended_and_told(string inside, string name, string told)
    {
        Arrival arrival = Read($"<RECIPES><RECIPE>{inside}</RECIPE></RECIPES>");
        Assert.True(arrival.IsRead);
        Assert.Equal(name, RecipeFile.Read(arrival.Files.First(file => file.Form == RecipeFile.Form).Text).Value!.Name);
        Assert.Contains(arrival.Travels, travel => travel.Kind == TravelKind.Repaired && travel.Words.Contains(told, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("AMOUNT", "4,2", "4.2 kg", "decimal comma")]
    [InlineData("AMOUNT", "0.004", "4 g", null)]
    [InlineData("AMOUNT", "0,0285", "28.5 g", "decimal comma")]
    public void Numbers_are_read_as_people_write_them(string tag, string written, string amount, string? told)
    {
        Arrival arrival = Read($"<RECIPES><RECIPE><NAME>Any</NAME><HOPS><HOP><NAME>Saaz</NAME><ALPHA>3.5</ALPHA><USE>Boil</USE><TIME>60</TIME><{tag}>{written}</{tag}></HOP></HOPS></RECIPE></RECIPES>");
        Assert.Equal(amount, Assert.Single(Recipe(arrival).Ingredients).Amount.Text);
        Assert.Equal(told is not null, arrival.Travels.Any(travel => travel.Kind == TravelKind.Repaired && travel.Where.EndsWith(tag, StringComparison.Ordinal)));
    }

    [Fact]
    public void Shares_below_one_per_cent_are_meant_as_ratios_and_told()
    {
        Arrival arrival = Read("<YEASTS><YEAST><NAME>House</NAME><TYPE>Ale</TYPE><FORM>Dry</FORM><ATTENUATION>0.75</ATTENUATION></YEAST></YEASTS>");
        Assert.Contains("\"attenuation\": \"75 %\"", Assert.Single(arrival.Files).Text, StringComparison.Ordinal);
        Assert.Contains(arrival.Travels, travel => travel is { Kind: TravelKind.Repaired, Where: "YEASTS[0].ATTENUATION" });
    }

    /// <summary>Gravities are reckoned anew, whatever scale a file has them in; each is told as it stands.</summary>
    [Theory]
    [InlineData("1.053")]
    [InlineData("1053.0")]
    [InlineData("11.5999926")]
    public void Stated_gravities_are_told_and_not_read(string gravity)
    {
        Arrival arrival = Read($"<RECIPES><RECIPE><NAME>Any</NAME><OG>{gravity}</OG></RECIPE></RECIPES>");
        Assert.Contains(arrival.Travels, travel => travel is { Kind: TravelKind.Left, Where: "RECIPES[0].OG" } && travel.Words.Contains(gravity, StringComparison.Ordinal));
    }

    [Fact]
    public void A_dry_hop_says_how_long_it_stays_and_we_on_which_day_it_goes_in()
    {
        Arrival arrival = Read("<RECIPES><RECIPE><NAME>Any</NAME><PRIMARY_AGE>10</PRIMARY_AGE><PRIMARY_TEMP>19</PRIMARY_TEMP><HOPS><HOP><NAME>Saaz</NAME><ALPHA>3.5</ALPHA><AMOUNT>0.05</AMOUNT><USE>Dry Hop</USE><TIME>4320</TIME></HOP></HOPS></RECIPE></RECIPES>");
        Assert.Equal(new AdditionTime(AdditionPoint.Ferment, 7), Assert.Single(Recipe(arrival).Ingredients).At);
    }

    [Fact]
    public void Litres_into_the_fermenter_become_litres_in_the_package_by_what_is_reckoned()
    {
        ArrivalWishes wishes = new() { CastOf = (recipe, _) => Gylebook.Science.Quantities.VolumeAt20C.FromLitres((recipe.Package.Volume.Value.Litres * 1.05) + 1.3) };
        Arrival arrival = OpenFile.Read(Encoding.UTF8.GetBytes("<RECIPES><RECIPE><NAME>Any</NAME><BATCH_SIZE>22.3</BATCH_SIZE></RECIPE></RECIPES>"), wishes)!;
        Assert.Equal("20 L", Recipe(arrival).Package.Volume.Text);
        Assert.Contains(arrival.Travels, travel => travel is { Kind: TravelKind.Converted, Where: "RECIPES[0].BATCH_SIZE" });
    }

    private static Recipe Recipe(Arrival arrival) => RecipeFile.Read(Assert.Single(arrival.Files, file => file.Form == RecipeFile.Form).Text).Value!;

    private static Arrival Read(string text) => OpenFile.Read(Encoding.UTF8.GetBytes(text))!;

    private static string Named(string encoding) => $"{Head.Replace("UTF-8", encoding, StringComparison.Ordinal)}<RECIPES><RECIPE><NAME>Prüfbräu</NAME></RECIPE></RECIPES>";
}
