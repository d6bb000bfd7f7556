namespace Gylebook.Benchmarks;

/// <summary>Work that no change of ours touches, so that machines and hours can be compared.</summary>
internal static class Yardstick
{
    /// <summary>Ten million multiply-adds, each of which waits for the one before.</summary>
    public static double TenMillionMultiplyAdds()
    {
        double sum = 0;
        for (int i = 0; i < 10_000_000; i++)
        {
            sum = Math.FusedMultiplyAdd(sum, 0.999999, 1);
        }

        return sum;
    }
}
