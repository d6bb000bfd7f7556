namespace Gylebook.Browser.Tests.Recipes;

/// <summary>How long from a key to new numbers, as the browser measures it. Told, not judged: machines differ.</summary>
public sealed class RecipeSpeedTests(ChromiumFixture chromium)
{
    private const int Keys = 120;

    // From the key's own time stamp to the frame that shows what was reckoned with it.
    private const string Watch =
        """
        () => {
          window.times = [];
          let key = 0;
          document.addEventListener('keydown', e => { key = e.timeStamp; }, true);
          new MutationObserver(() => {
            if (key > 0) {
              const from = key;
              key = 0;
              requestAnimationFrame(() => window.times.push(performance.now() - from));
            }
          }).observe(document.getElementById('run'), { attributes: true, attributeFilter: ['data-reckoned'] });
        }
        """;

    [Fact]
    public async Task From_a_key_to_new_numbers()
    {
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        await one.PaleAle.FillAsync("4.0");
        await one.Page.WaitForTimeoutAsync(1000);
        await one.Page.EvaluateAsync(Watch);
        await one.PaleAle.FocusAsync();
        await one.PaleAle.PressAsync("End");
        for (int i = 0; i < Keys; i++)
        {
            // 4.0, 4.05, 4.0 …: every text on the way is a weight. Now and then a pause, so that saving is among it.
            await one.Page.Keyboard.PressAsync(i % 2 == 0 ? "5" : "Backspace");
            await one.Page.WaitForFunctionAsync("n => window.times.length > n", i);
            await one.Page.WaitForTimeoutAsync(i % 10 == 9 ? 450 : 40);
        }

        double[] times = [.. (await one.Page.EvaluateAsync<double[]>("() => window.times")).Order()];
        Assert.Equal(Keys, times.Length);
        Assert.Equal("4.0", await one.PaleAle.InputValueAsync());
        Assert.Null(await one.PaleAle.GetAttributeAsync("aria-invalid"));
        TestContext.Current.TestOutputHelper!.WriteLine($"p50 {times[Keys / 2]:0.0} ms, p95 {times[Keys * 95 / 100]:0.0} ms, most {times[^1]:0.0} ms");
    }
}
