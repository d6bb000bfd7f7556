using System.Text;
using Gylebook.Gyles;
using Gylebook.Gyles.Packaging;
using Gylebook.Pictures.Labels;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using QRCoder;

namespace Gylebook.Web.Features.Gyles.Packaging;

/// <summary>Labels to print: a plain page that holds no connection.</summary>
internal static class LabelPages
{
    private const string StyleName = "labels.css";
    private const int Most = 400;

    /// <summary>Answers the addresses of <see cref="PageUrls.Labels"/>, and the style sheet they share.</summary>
    public static void Map(WebApplication site)
    {
        site.MapGet("/gyles/{id:guid}/labels", GiveAsync);
        site.MapGet($"/{StyleName}", () => Results.Text(LabelSheetHtml.StyleSheet, "text/css", Encoding.UTF8));
    }

    private static async Task<IResult> GiveAsync(Guid id, int? count, string? portion, GyleDesk desk, PackageDesk packages, TimeProvider clock, CancellationToken cancellation)
    {
        if (await desk.OpenAsync(id, cancellation) is not { } gyle || await packages.OpenAsync(gyle, gyle.Division.Find(portion)?.Name, cancellation) is not { } of)
        {
            return Results.NotFound();
        }

        (PackageQuestion? asked, PackagePlan? plan, _) = of.Of(of.Recipes);
        LabelText label = LabelText.Of(of, asked, plan, clock.GetLocalNow());
        int filled = gyle.Log.ActionsOf(of.Portion.Name).Where(action => action.Kind == ActionKind.Packaged).SelectMany(action => PackagedDetail.Read(action.Detail) ?? []).Sum(one => one.Count);
        string[] lines =
        [
            label.ContainsSentence, .. label.MayContainSentence.Length > 0 ? (string[])[label.MayContainSentence] : [], $"{label.Ingredients}.",
            label.DaysSentence(litres => Invariant($"{litres:0.0#} L"), clock),
        ];
        string said = $"{label.Name}, {label.Strength}. {string.Join(' ', lines)}";
        return Results.Text(
            LabelSheetHtml.Page(new PrintedLabel(label.Name, label.Strength, lines, CodeOf(said)), Math.Clamp(count ?? (filled > 0 ? filled : plan?.Filled.Sum(one => one.Count) ?? LabelSheetHtml.OnAPage), 1, Most), $"../../{StyleName}"),
            "text/html", Encoding.UTF8);
    }

    /// <summary>The label itself, to be kept by whoever drinks: it leads to no address, so that it is true without a network.</summary>
    private static string CodeOf(string text)
    {
        using QRCodeData code = QRCodeGenerator.GenerateQrCode(text.Length > 600 ? text[..600] : text, QRCodeGenerator.ECCLevel.L);
        return new SvgQRCode(code).GetGraphic(2, "#000000", "#ffffff", drawQuietZones: false, SvgQRCode.SizingMode.ViewBoxAttribute);
    }
}
