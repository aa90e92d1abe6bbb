using Practice.Service.Plans;

namespace Practice.Web.Features.Plans;

/// <summary>The turns in a version's life that the workbench offers.</summary>
internal sealed record PlanLife(IssuePlan Issue, BeginVersion Begin, WithdrawPlan Withdraw);
