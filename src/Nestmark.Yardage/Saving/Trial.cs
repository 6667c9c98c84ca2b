namespace Nestmark.Yardage.Saving;

/// <summary>A change to be laid.</summary>
/// <param name="Kind">What is changed.</param>
/// <param name="What">The change in words.</param>
/// <param name="Before">The plan of the cloth without it.</param>
/// <param name="Job">The job with it; one cloth.</param>
/// <param name="Consequence">What the change asks in return, once it has been laid.</param>
internal sealed record Trial(SavingKind Kind, string What, ClothPlan Before, Job Job, Func<ClothPlan, string> Consequence);
