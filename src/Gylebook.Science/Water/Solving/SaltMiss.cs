namespace Gylebook.Science.Water;

/// <summary>Says which limit keeps a target from being reached.</summary>
internal static class SaltMiss
{
    internal static TargetMiss Explain(SaltPlan plan, SaltProblem problem, double[] amounts, IonTarget target)
    {
        double reached = problem.Reached(target.Ion, amounts);
        double want = Math.Sign(target.MilligramsPerLitre - reached);
        bool any = false;
        List<string> atLimit = [];
        for (int column = 0; column < amounts.Length; column++)
        {
            double effect = want * problem.Effect[column, (int)target.Ion];
            bool roomAnywhere = problem.High[column] > problem.Low[column];
            if (effect == 0 || (!roomAnywhere && effect < 0))
            {
                continue;
            }

            // An offer that could help by being more, or by being less.
            bool helps = effect > 0 ? problem.High[column] > 0 : amounts[column] > 0;
            any |= helps;
            bool stuck = effect > 0 ? amounts[column] >= problem.High[column]
                : amounts[column] <= problem.Low[column] && problem.Low[column] > 0;
            if (helps && stuck)
            {
                atLimit.Add(problem.Names[column]);
            }
        }

        if (!any)
        {
            return new TargetMiss(target.Ion, target.MilligramsPerLitre, reached,
                want > 0 ? MissReason.NothingBringsIt : MissReason.NothingRemovesIt, "");
        }

        return atLimit.Count > 0
            ? new TargetMiss(target.Ion, target.MilligramsPerLitre, reached, MissReason.OfferAtLimit, string.Join(", ", atLimit))
            : new TargetMiss(target.Ion, target.MilligramsPerLitre, reached, MissReason.OtherTargets,
                Opposing(plan, problem, amounts, target, want));
    }

    internal static IReadOnlyList<WaterDiagnosis> Diagnose(
        SaltPlan plan, IReadOnlyList<SaltFound> salts, IonProfile ions)
    {
        List<WaterDiagnosis> found = [];
        if (ions.Bicarbonate < 0)
        {
            found.Add(new("liquor.freeAcid", "More acid than alkalinity: the liquor itself is sour.",
                ions.AlkalinityMilliequivalents, 0, "mEq/L"));
        }

        double chalk = salts.Where(salt => salt.Salt.Id == "chalk").Sum(salt => salt.GramsPerLitre);
        if (chalk > 0)
        {
            double holds = Math.Max(0, CalciteEquilibrium.WithChalk(plan.Source).ChalkGramsPerLitre);
            if (chalk > holds + 1e-9)
            {
                found.Add(new("liquor.chalkUndissolved", "So much chalk does not dissolve in water and air.",
                    chalk, holds, "g/L"));
            }
        }

        return found;
    }

    // Other targets that an offer moving this ion the right way would carry further off.
    private static string Opposing(
        SaltPlan plan, SaltProblem problem, double[] amounts, IonTarget target, double want)
    {
        SortedSet<Ion> against = [];
        for (int column = 0; column < amounts.Length; column++)
        {
            double direction = Math.Sign(want * problem.Effect[column, (int)target.Ion]);
            bool canMove = direction > 0 ? amounts[column] < problem.High[column]
                : direction < 0 && amounts[column] > problem.Low[column];
            if (!canMove)
            {
                continue;
            }

            foreach (IonTarget other in plan.Targets.Where(other => other.Ion != target.Ion && other.Weight > 0))
            {
                double change = direction * problem.Effect[column, (int)other.Ion];
                double over = problem.Reached(other.Ion, amounts) - other.MilligramsPerLitre;
                if (change * over > 0)
                {
                    against.Add(other.Ion);
                }
            }
        }

        return string.Join(", ", against);
    }
}
