#include "engine/airflow/fan_laws.hpp"

#include <cmath>

#include "engine/base/ensure.hpp"

namespace endbell::inline airflow {

Airflow airflow_at(Torque torque, Torque known_torque, Airflow known_airflow) {
    ensure(torque.in(pound_foot) > 0 && known_torque.in(pound_foot) > 0,
           "a turning motor's torque is above zero");
    return known_airflow * std::sqrt(torque / known_torque);
}

}  // namespace endbell::inline airflow
