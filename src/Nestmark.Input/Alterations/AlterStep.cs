namespace Nestmark.Input.Alterations;

/// <summary>One alteration as read, ready to be made.</summary>
/// <param name="Make">Makes it on all pieces that it names.</param>
internal sealed record AlterStep(Action<AlterationRun> Make);
