set(
  ROOM_SOURCES
  registry.cpp parts.cpp feed.cpp door_slot.cpp intake.cpp regulator.cpp burn_tunnel.cpp batch_box.cpp barrel.cpp bell.cpp
  chamber.cpp run.cpp bend.cpp tee.cpp taper.cpp end_cap.cpp damper.cpp stack_head.cpp fan.cpp fan_head.cpp leaky_joint.cpp)
